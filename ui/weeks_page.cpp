#include "weeks_page.hpp"

#include "foot.hpp"

#include "amounts.hpp"
#include "fleet_weeks.hpp"
#include "title_block.hpp"

#include <algorithm>
#include <numeric>

namespace cotter::ui {

namespace {

constexpr int quarter = 13; // weeks

std::size_t models_that_fit(double width) { return figures::fleet_columns_that_fit(width) - 1; } // beside all of them

} // namespace

void WeeksPage::look()
{
    const std::string of = looked_at(outside_) + std::to_string(fleet_.steps().done());
    if (of == looked_of_)
        return;
    looked_of_ = of;
    weeks_ = desk::weeks_ahead(outside_.book, fleet_.known_rows(), outside_.hand("").day, quarter);
}

// All attachments, then the models, those that fall short first; as many as fit.
void WeeksPage::draw_weeks(Sheet& sheet, const Box& area) const
{
    std::vector<std::size_t> models(weeks_.empty() ? 0 : weeks_.front().models.size());
    std::iota(models.begin(), models.end(), std::size_t{0});
    std::stable_partition(models.begin(), models.end(), [&](std::size_t model) {
        return std::any_of(weeks_.begin(), weeks_.end(),
                           [&](const desk::Week& each) { return each.models[model].is_short(); });
    });
    models.resize(std::min(models.size(), models_that_fit(area.w)));
    std::vector<std::string> headings{say("All of them")};
    for (const std::size_t each : models)
        headings.push_back(desk::shown_name(outside_.book, weeks_.front().models[each].model));
    std::vector<figures::FleetWeek> drawn;
    const auto cell = [](int wanted, int in_date) {
        return figures::FleetCell{wanted, in_date, say("{} of {}", wanted, in_date)};
    };
    for (const desk::Week& each : weeks_) {
        drawn.push_back({words::short_day(each.monday), each.is_short(), {cell(each.wanted, each.in_date)}});
        for (const std::size_t model : models)
            drawn.back().cells.push_back(cell(each.models[model].only, each.models[model].in_date));
    }
    sheet.figure(figures::fleet_weeks(headings, drawn, area.w, area.h), area.x, area.y);
}

std::string WeeksPage::heading() const
{
    if (*fleet_.steps().button()) // a part of the fleet says nothing of what is short
        return said_of(fleet_.steps());
    const auto short_of =
        std::find_if(weeks_.begin(), weeks_.end(), [](const desk::Week& each) { return each.is_short(); });
    return short_of == weeks_.end()
               ? say("The coming quarter")
               : say("Short from {}: have one examined, or hire one in", words::short_day(short_of->monday));
}

bool WeeksPage::draw(Sheet& sheet)
{
    fleet_.all_are_read();
    std::vector<std::string> buttons{"Back"};
    if (const char* button = fleet_.steps().button(); *button)
        buttons.insert(buttons.begin(), button);
    const Box area = begin_page(sheet, heading(), buttons);
    if (!*fleet_.steps().button()) {
        look();
        constexpr double under = 14;
        draw_weeks(sheet, {area.x, area.y, area.w, area.h - under});
        const Lettering small{Letter::second, true};
        const std::size_t models = weeks_.empty() ? 0 : weeks_.front().models.size(), fit = models_that_fit(area.w);
        sheet.wrapped(
            {4, area.y + area.h - under + 1.4, area.w - 8, 0}, small,
            say("Wanted by orders, of those in date to the week's end. Of a model: the orders that no other serves.") +
                (models > fit ? " " + say("Models not drawn, none of them shorter: {}.", models - fit) : ""),
            3, colours().second);
    }
    const std::string pressed = draw_foot(sheet, buttons);
    fleet_.steps().press(pressed);
    ui::draw(sheet, title_block(outside_, "DESK", ""));
    return pressed != "Back";
}

} // namespace cotter::ui
