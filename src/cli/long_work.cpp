#include "long_work.hpp"

#include "daily_backup.hpp"

#include <utility>

namespace cotter::cli {

namespace {

records::Watch shown_by(const ui::Wait& wait, ui::Work work)
{
    return [&wait, work](std::int64_t done, std::int64_t of) mutable {
        work.done = done;
        work.of = of;
        return wait(work);
    };
}

} // namespace

ui::Between LongWork::check(const ui::Wait& wait)
{
    return session_.store().check_on_opening(shown_by(wait, ui::reading_the_book)) ? ui::Between::work
                                                                                   : ui::Between::close;
}

// A damaged book pushes out no good copy.
void LongWork::copy(const ui::Wait& wait)
{
    if (!session_.store().state().damaged)
        notice_ = back_up_today(session_, session_.store(), path_, shown_by(wait, ui::copying_the_book));
}

ui::Between LongWork::do_it(const ui::Wait& wait)
{
    if (std::exchange(owes_check_, false))
        return check(wait);
    if (!std::exchange(owes_copy_, false))
        return ui::Between::nothing;
    copy(wait);
    return ui::Between::work;
}

} // namespace cotter::cli
