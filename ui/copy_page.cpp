#include "copy_page.hpp"

#include "people.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "written.hpp"

#include <utility>

namespace cotter::ui {

std::string newest_report(const records::Book& book, const std::string& unit)
{
    std::string newest, id;
    for (const auto& report : book.facts_about("report", unit))
        if (const std::string day = report.doc.value("examined", ""); day >= newest) {
            newest = day;
            id = report.key.key;
        }
    return id;
}

Choice which_report(const records::Book& book, const std::string& report)
{
    const auto day = rules::parse_day(desk::doc(book, "report", report).value("examined", ""));
    return {say("Is it the report of the examination on {}?", day ? words::long_day(*day) : std::string{"?"}),
            say("Read the day on the paper. In the book it is {}.", report),
            {{"Yes, that day", "its copy is then here", figures::Sign::in_order},
             {"Another", "it is no copy of that report", std::nullopt}},
            true,
            "Back"};
}

CopyPage::CopyPage(const Outside& outside, std::string unit)
    : outside_{outside}, unit_{std::move(unit)}, report_{newest_report(outside.book, unit_)},
      photo_{outside, "Photo of the report: the whole page", false}
{
}

void CopyPage::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> CopyPage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person_));
    return pressed;
}

void CopyPage::who(Sheet& sheet)
{
    const auto people = report_.empty() ? std::vector<std::string>{} : who_may_write(outside_.book, "source_page");
    const Choice choice =
        choice_of_people(outside_.book, "Who photographs it?", people,
                         report_.empty() ? "No report of it is in the book yet. Record it first: Papers and data."
                                         : "Nobody is admitted who may. The supervisor admits people in Site.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::gone);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        person_ = person;
        go(Page::photo);
    });
}

void CopyPage::photo(Sheet& sheet)
{
    const auto left = photo_.draw(sheet, person_);
    if (left != PhotoPage::Left::nothing)
        go(left == PhotoPage::Left::kept ? Page::which : Page::who);
}

void CopyPage::which(Sheet& sheet)
{
    const auto pressed = ask(sheet, which_report(outside_.book, report_));
    if (!pressed)
        return;
    go(Page::photo);
    if (*pressed != 0)
        return;
    desk::write(outside_.book,
                {show_page(outside_.hand(person_), "report", report_, photo_.name(), "photographed here", true)});
    go(Page::done);
}

bool CopyPage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::who: who(sheet); break;
    case Page::photo: photo(sheet); break;
    case Page::which: which(sheet); break;
    case Page::done:
        if (ask(sheet, {say("The report of {} is here", desk::label_of(outside_.book, unit_)),
                        "",
                        {{"Understood", "", figures::Sign::in_order}},
                        false,
                        ""}))
            go(Page::gone);
        break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
