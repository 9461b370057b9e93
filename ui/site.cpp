#include "site.hpp"

#include "foot.hpp"

#include "first_steps.hpp"

#include "amounts.hpp"
#include "local_time.hpp"
#include "plan_in_force.hpp"

#include "written.hpp"

#include <algorithm>
#include <utility>

namespace cotter::ui {

using records::Json;

void Site::go(Page page)
{
    page_ = page;
    turned_ = 0;
    reading_.back_to_the_top();
}

Json Site::roles_today() const
{
    const std::string site = desk::current_site(outside_.book);
    const rules::Day today = desk::working_day(outside_.book, site, outside_.now());
    return desk::doc(outside_.book, "people_today", site + " " + rules::to_string(today))
        .value("roles", Json::object());
}

std::string Site::supervisor() const { return roles_today().value("supervisor", ""); }

std::vector<Json> Site::places() const
{
    return desk::places_in_force(outside_.book, desk::current_site(outside_.book), outside_.hand("").day);
}

std::optional<std::size_t> Site::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "SUPERVISOR", supervisor()));
    return pressed;
}

const std::vector<std::string> Site::all_buttons{"Due",  "Stopped", "Place",   "People",   "Plans",
                                                 "Laid", "Record",  "Compare", "This day", "Leave"};

// `list`: what the page's own button turns.
void Site::buttons(Sheet& sheet, Page now, TouchScroll* list)
{
    constexpr std::array pages{Page::due,  Page::stopped, Page::place,   Page::people, Page::plans,
                               Page::laid, Page::record,  Page::compare, Page::today,  Page::gone};
    const auto here = std::find(pages.begin(), pages.end(), now) - pages.begin();
    const std::string pressed = draw_foot(sheet, with_button(all_buttons, list ? list->button() : ""),
                                          all_buttons[static_cast<std::size_t>(here)]);
    if (list)
        list->press(pressed);
    if (std::find(all_buttons.begin(), all_buttons.end(), pressed) == all_buttons.end())
        return;
    const Page next = pages[static_cast<std::size_t>(std::find(all_buttons.begin(), all_buttons.end(), pressed) -
                                                     all_buttons.begin())];
    if (next == Page::compare)
        compare_.emplace(outside_);
    if (next == Page::plans)
        plans_.emplace(outside_);
    if (next == Page::laid)
        laid_.emplace(outside_);
    if (next == Page::record)
        record_.emplace(outside_, "");
    go(next);
}

void Site::due(Sheet& sheet)
{
    if (first_.has_the_glass())
        return first_.draw_page(sheet);
    is_begun_ = is_begun_ || desk::is_begun(outside_.book);
    if (!is_begun_) {
        first_.list(sheet, begin_page(sheet, "A new site begins", with_button(all_buttons, first_.scroll().button())));
        buttons(sheet, Page::due, &first_.scroll());
        return ui::draw(sheet, title_block(outside_, "SUPERVISOR", supervisor()));
    }
    if (due_.has_the_glass())
        return due_.ask(sheet);
    TouchScroll* list = due_.scroll();
    const auto foot = with_button(all_buttons, list ? list->button() : "");
    due_.draw(sheet, sheet.height() - title_height(sheet) - foot_height(sheet, foot));
    buttons(sheet, Page::due, list); // first under the keyboard
    if (due_.head(sheet)) {
        ahead_.emplace(outside_);
        go(Page::ahead);
    }
    ui::draw(sheet, title_block(outside_, "SUPERVISOR", supervisor()));
}

void Site::place(Sheet& sheet)
{
    const std::vector<Json> marks = places();
    Choice choice{"Which standing place is confirmed?",
                  say("By today's supervisor: {}", supervisor().empty()
                                                       ? say("nobody is named yet")
                                                       : desk::shown_name(outside_.book, supervisor())),
                  {},
                  false,
                  "Back"};
    if (marks.empty())
        choice.hint = "No plan is in force, so there is no mark. Plans makes and issues one.";
    if (!supervisor().empty())
        for (const Json& each : marks)
            choice.options.push_back({say("Mark {}", each.value("id", "")), "", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::due);
    outside_.signing.in(supervisor(), [this, place = marks[*pressed].value("id", "")] {
        confirms_.emplace(outside_, place, supervisor());
        go(Page::confirm);
    });
}

bool Site::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::due: due(sheet); break;
    case Page::stopped: stopped(sheet); break;
    case Page::place: place(sheet); break;
    case Page::confirm:
        if (!confirms_->draw(sheet))
            go(confirms_->is_done() ? Page::due : Page::place);
        break;
    case Page::clock: clock(sheet); break;
    case Page::people: people(sheet); break;
    case Page::name: name(sheet); break;
    case Page::whose_pin: whose_pin(sheet); break;
    case Page::by_whom: by_whom(sheet); break;
    case Page::admit:
        if (!admitting_->draw(sheet))
            go(Page::people);
        break;
    case Page::briefing:
        if (!briefing_->draw(sheet))
            go(Page::people);
        break;
    case Page::compare:
        if (!compare_->draw(sheet))
            go(Page::due);
        break;
    case Page::plans:
        if (!plans_->draw(sheet))
            go(Page::due);
        break;
    case Page::laid:
        if (!laid_->draw(sheet))
            go(Page::due);
        break;
    case Page::record:
        if (!record_->draw(sheet))
            go(Page::due);
        break;
    case Page::receive:
        if (!receive_->draw(sheet))
            go(Page::stopped);
        break;
    case Page::lift_stop:
        if (!lift_stop_->draw(sheet))
            go(Page::stopped);
        break;
    case Page::copy:
        if (!copy_->draw(sheet))
            go(Page::stopped);
        break;
    case Page::ahead:
        if (!ahead_->draw(sheet))
            go(Page::due);
        break;
    case Page::today:
        if (!today_.draw(sheet))
            go(Page::due);
        break;
    case Page::gone: break;
    }
    if (page_ != Page::gone)
        return true;
    page_ = Page::due;
    return false;
}

} // namespace cotter::ui
