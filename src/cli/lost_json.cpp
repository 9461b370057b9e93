#include "lost_json.hpp"

#include "local_time.hpp"

namespace cotter::cli {

namespace {

Json time_json(std::int64_t at) { return at == 0 ? Json{} : Json(desk::to_string(rules::Instant{at})); }

} // namespace

Json lost_json(const db::Lost& lost)
{
    return {{"device", lost.device},
            {"first", lost.first},
            {"last", lost.last == 0 ? Json{} : Json(lost.last)},
            {"after", time_json(lost.after)},
            {"before", time_json(lost.before)}};
}

} // namespace cotter::cli
