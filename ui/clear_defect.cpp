#include "clear_defect.hpp"

#include "people.hpp"

#include "entitled.hpp"
#include "title_block.hpp"

#include "calls.hpp"
#include "written.hpp"

namespace cotter::ui {

namespace {

const std::vector<const char*> remedies{"part renewed, like for like", "adjusted or tightened by the maker's steps",
                                        "cleaned; nothing is wrong with it", "looked at; no defect is there",
                                        "paper or plate put right"};

} // namespace

ClearDefect::ClearDefect(const Outside& outside, desk::OpenDefect defect, bool may_type)
    : outside_{outside}, defect_{std::move(defect)}, remedy_{outside, "What was done about it?", remedies, may_type},
      photo_{outside, "A photo of it as it is now"}
{
}

std::optional<std::size_t> ClearDefect::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "CLEARS", person_));
    return pressed;
}

std::string said_of(const Outside& outside, const desk::OpenDefect& defect)
{
    const std::string what = words::in_language(defect.what);
    return desk::label_of(outside.book, defect.unit) + ": " + (defect.is_not_so ? say("Not right: {}", what) : what);
}

std::string ClearDefect::name() const { return said_of(outside_, defect_); }

void ClearDefect::who(Sheet& sheet)
{
    auto people = who_may_write(outside_.book, "defect_cleared");
    std::erase(people, defect_.found_by);
    const bool of_report = !defect_.defect.empty(); // its examiner found it: only a competent person's word clears it
    if (of_report)
        std::erase_if(people, [&](const auto& each) { return !desk::has_role(outside_.book, each, "competent"); });
    Choice choice = choice_of_people(outside_.book,
                                     of_report ? "Which competent person clears what the examination found?"
                                               : "Who clears it? Not whoever found it.",
                                     people, "Nobody is admitted who may clear a defect. People admits them.");
    if (!people.empty())
        choice.hint = name();
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size()) {
        page_ = Page::gone;
        return;
    }
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] {
        person_ = person;
        page_ = Page::remedy;
    });
}

void ClearDefect::remedy(Sheet& sheet)
{
    const auto left = remedy_.draw(sheet, person_);
    if (left != Phrases::Left::nothing)
        page_ = left == Phrases::Left::said ? Page::photo : Page::who;
}

void ClearDefect::photo(Sheet& sheet)
{
    const auto left = photo_.draw(sheet, person_);
    if (left == PhotoPage::Left::kept)
        write({photo_.name()});
    if (left == PhotoPage::Left::back)
        page_ = Page::remedy;
    if (left == PhotoPage::Left::without)
        write({});
}

void ClearDefect::write(std::vector<std::string> photos)
{
    page_ = Page::who; // where it is refused: the reason is said, and what was said and photographed stays
    desk::write(outside_.book, {clear_defect(outside_.hand(person_), defect_, remedy_.said(), photos)});
    page_ = Page::done;
}

bool ClearDefect::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::who: who(sheet); break;
    case Page::remedy: remedy(sheet); break;
    case Page::photo: photo(sheet); break;
    case Page::done:
        if (ask(sheet, {"The defect is cleared", name(), {{"Understood", "", std::nullopt}}, false, ""}))
            page_ = Page::gone;
        break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
