#include "long_work.hpp"

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
    if (!session_.store().check_on_opening(shown_by(wait, ui::reading_the_book)))
        return ui::Between::close;
    if (!session_.store().state().damaged && !is_backed_up_today(session_, session_.store()))
        copy_ = Copy::due;
    return ui::Between::work;
}

// A damaged book pushes out no good copy.
void LongWork::copy(const records::Watch& watch)
{
    copy_ = Copy::none;
    if (!session_.store().state().damaged)
        wrong_ = back_up_today(session_, session_.store(), path_, watch);
}

void LongWork::day_is_over()
{
    if (copy_ == Copy::owed)
        copy_ = Copy::due;
}

void LongWork::finish()
{
    if (checked_ && copy_ != Copy::none)
        copy({});
}

ui::Between LongWork::do_it(const ui::Wait& wait)
{
    if (!std::exchange(checked_, true))
        return check(wait);
    if (copy_ != Copy::due)
        return ui::Between::nothing;
    copy(shown_by(wait, ui::copying_the_book));
    return ui::Between::work;
}

} // namespace cotter::cli
