#include "record_menu.hpp"

#include "kinds.hpp"
#include "title_block.hpp"

#include <vector>

namespace cotter::ui {

namespace {

struct Group {
    const char *words, *more;
    std::vector<const char*> kinds;
};

// What people write down that no other page asks for.
const std::vector<Group>& groups()
{
    static const std::vector<Group> all{
        {"The day's work",
         "trench, machine, coupling",
         {"trench_inspection", "fall_of_ground", "devices_proved", "machine_set_up", "coupled", "uncoupled",
          "headplate_fitted", "rigging", "pipe_laid", "lift_without_answer"}},
        {"Something happened",
         "event, defect, stop",
         {"event", "event_looked", "event_assessed", "defect_found", "defect_cleared", "stop_lifted"}},
        {"Units come and go", "received, sent, returned", {"unloaded", "dispatched", "returned", "off_hire", "order"}},
        {"Papers and data",
         "reports, units, pipes, charts",
         {"examination_report", "interim_statement", "declaration", "unit", "pipe", "chart", "model", "check_sheet",
          "site"}}};
    return all;
}

} // namespace

std::optional<std::string> RecordMenu::choose_group(Sheet& sheet)
{
    Choice choice{"What is there to write down?", "", {}, false, "Back"};
    for (const Group& each : groups())
        choice.options.push_back({each.words, each.more, std::nullopt});
    choice.options.push_back({"A unit has come", "plate, parts, evidence; or refused", std::nullopt});
    choice.options.push_back({"Put right", "what was written wrong", std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    const std::size_t own = groups().size();
    if (!pressed)
        return std::nullopt;
    if (*pressed > own + 1)
        return "";
    turned_ = 0;
    if (*pressed == own)
        receive_.emplace(outside_, true);
    else if (*pressed == own + 1)
        correct_.emplace(outside_);
    else
        group_ = *pressed;
    return std::nullopt;
}

std::optional<std::string> RecordMenu::choose_kind(Sheet& sheet)
{
    const Group& of = groups()[*group_];
    Choice choice{of.words, "", {}, false, "Back"};
    const bool of_units = *group_ == 2, of_papers = *group_ == 3;
    if (of_units)
        choice.options.push_back({"Call the yard", "swap, breakdown, collect", std::nullopt});
    if (of_papers)
        choice.options.push_back({"A pipe by tape", "no plate or note tells its size", std::nullopt});
    const std::size_t own = choice.options.size();
    for (const char* each : of.kinds)
        choice.options.push_back({records::find_kind(each)->schema.at("title").get<std::string>(), "", std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    if (!pressed)
        return std::nullopt;
    if (*pressed >= own && *pressed < choice.options.size())
        return of.kinds[*pressed - own];
    if (*pressed == choice.options.size()) {
        group_.reset();
        turned_ = 0;
    } else if (of_units)
        call_.emplace(outside_, true);
    else
        tape_.emplace(outside_);
    return std::nullopt;
}

bool RecordMenu::draw_own_page(Sheet& sheet)
{
    const auto draw = [&](auto& page) {
        if (page && !page->draw(sheet))
            page.reset();
    };
    const bool was_open = receive_ || call_ || tape_ || correct_;
    draw(receive_), draw(call_), draw(tape_), draw(correct_);
    return was_open;
}

std::optional<std::string> RecordMenu::draw(Sheet& sheet)
{
    if (draw_own_page(sheet))
        return std::nullopt;
    const auto chosen = group_ ? choose_kind(sheet) : choose_group(sheet);
    ui::draw(sheet, title_block(outside_, "WRITES", ""));
    return chosen;
}

} // namespace cotter::ui
