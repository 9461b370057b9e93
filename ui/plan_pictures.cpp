#include "plan_pictures.hpp"

#include "looks.hpp"

#include "plan_parts.hpp"
#include "real_size.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::ui {

using records::Json;

namespace {

rules::Pipe widest_of(const desk::PlanSheet& plan)
{
    if (plan.runs.empty() || plan.sheet.at("stands").empty())
        throw desk::NotFound{"This worksheet has no pipes or no standing place yet, so it is not drawn"};
    for (const desk::PlannedPipe& each : plan.runs)
        if (!each.pipe.overall)
            throw desk::NotFound{each.id + ": its length is not in this book, so the plan is not drawn"};
    return std::max_element(plan.runs.begin(), plan.runs.end(),
                            [](const desk::PlannedPipe& a, const desk::PlannedPipe& b) {
                                return desk::outside(a.pipe) < desk::outside(b.pipe);
                            })
        ->pipe;
}

} // namespace

PlanPictures::PlanPictures(const records::Book& book, const Json& plan, rules::Instant now)
    : plan_{desk::read_plan_sheet(book, plan.at("worksheet"), now)}, whole_(plan), pipe_{widest_of(plan_)}
{
    path_asked_ = desk::path_in_trench(plan_, pipe_);
    if (path_asked_)
        path_ = rules::find_path(*path_asked_);
}

void PlanPictures::step() { step_ = path_.empty() ? 0 : (step_ + 1) % path_.size(); }

std::string PlanPictures::caption(PlanPicture picture) const
{
    const std::string mark = say("Mark {}", stand().at("id").get<std::string>());
    switch (picture) {
    case PlanPicture::above: return say("{}, from above", mark);
    case PlanPicture::section: return say("{}, in section", mark);
    case PlanPicture::chart: return say("{}, on the chart", mark);
    case PlanPicture::path: break;
    }
    if (path_.empty())
        return "No path was found";
    return say("Path, step {} of {}, tilt {}\u00b0", step_ + 1, path_.size(),
               std::lround(std::copysign(std::ceil(std::abs(path_[step_].tilt) - 0.05), path_[step_].tilt)));
}

figures::StandDrawn PlanPictures::drawn() const
{
    return {desk::move_at(plan_, stand(), pipe_), whole_.value("zone_mm", 0.0), plan_.tail_swing.value_or(0),
            static_cast<double>(pipe_.overall->count())};
}

figures::Figure PlanPictures::figure(PlanPicture picture, double width, double height) const
{
    const figures::StandDrawn stand_drawn = drawn();
    if (picture == PlanPicture::above)
        return figures::from_above(stand_drawn, width, height);
    if (picture == PlanPicture::section)
        return figures::in_section(stand_drawn, width, height);
    if (picture == PlanPicture::path)
        return figures::in_trench({*path_asked_, path_, step_, plan_.sheet.at("trench").at("depth_mm").get<double>()},
                                  width, height);
    const Json places = whole_.value("places", Json::array());
    const auto place =
        std::find_if(places.begin(), places.end(), [&](const Json& each) { return each.at("id") == stand().at("id"); });
    return figures::chart_by_use(
        {*plan_.gear.chart, place == places.end() ? rules::Sector::both : *records::read_move(*place).sector,
         rules::way_of(rules::move_points(stand_drawn.move)), whole_.value("greatest_kg", 0.0)},
        width, height);
}

} // namespace cotter::ui
