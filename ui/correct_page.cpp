#include "correct_page.hpp"

#include "form_words.hpp"
#include "people.hpp"
#include "title_block.hpp"

#include "amounts.hpp"
#include "entitled.hpp"
#include "kinds.hpp"
#include "local_time.hpp"
#include "written.hpp"

#include <algorithm>
#include <cctype>

namespace cotter::ui {

using records::Json;

namespace {

constexpr std::size_t shown = 60;
const std::vector<const char*> reasons_to_correct{"typed wrong", "meant for another one", "it did not happen",
                                                  "seen wrong", "written twice"};

// What the program writes of itself, or what only its own person sets, is not put right here.
bool may_be_corrected(const std::string& kind)
{
    const records::Kind* found = records::find_kind(kind);
    return found && kind != "correction" && kind != "device" && !found->schema.contains("x-program");
}

std::string title_of(const std::string& kind)
{
    return words::in_language(records::find_kind(kind)->schema.value("title", kind));
}

} // namespace

void CorrectPage::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> CorrectPage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "PUTS RIGHT", ""));
    return pressed;
}

bool CorrectPage::is_corrected(const std::string& hash)
{
    if (const std::string of = outside_.book.state().head.hash; of != corrected_of_) {
        corrected_of_ = of;
        corrected_.clear();
        for (const auto& each : outside_.book.newest("correction", 100'000))
            corrected_.insert(each.entry.body.value("corrects", ""));
    }
    return corrected_.contains(hash);
}

std::string CorrectPage::name_of_record(const records::Record& record) const
{
    const auto& e = record.entry;
    const std::string name = desk::shown_name(outside_.book, e.about);
    const auto digits = std::count_if(name.begin(), name.end(), [](unsigned char c) { return std::isdigit(c) != 0; });
    const bool is_for_machines = name == e.about && digits >= 8; // a hash, an instant
    return title_of(e.kind) + (is_for_machines ? "" : ": " + name);
}

void CorrectPage::look()
{
    const std::string of = looked_at(outside_) + kind_ + std::to_string(older_);
    if (of == looked_of_)
        return;
    looked_of_ = of;
    newest_.clear();
    lines_.clear();
    const std::string zone = desk::zone_of(outside_.book, desk::current_site(outside_.book));
    const auto all = outside_.book.newest(kind_, shown * (older_ + 1));
    for (std::size_t i = shown * older_; i < all.size(); ++i) {
        const auto& each = all[i];
        const auto& e = each.entry;
        if (!may_be_corrected(e.kind))
            continue;
        const bool is_old = is_corrected(each.hash);
        newest_.push_back(each);
        lines_.push_back({false, std::nullopt, name_of_record(each),
                          desk::shown_name(outside_.book, e.who) + ", " +
                              words::short_day(desk::local_day(e.at, zone)) + " " +
                              words::clock_time(desk::local_minutes(e.at, zone)) + " \u00b7 " +
                              value_in_words(outside_.book, records::find_kind(e.kind)->schema, "", e.body),
                          is_old ? "" : "Put right"});
        if (is_old)
            lines_.back().more = say("Put right since. {}", lines_.back().more);
    }
    if (lines_.empty())
        lines_.push_back({false, std::nullopt, older_ > 0 ? "Nothing older" : "Nothing is written yet",
                          "What is written stands here, the newest first."});
}

void CorrectPage::list(Sheet& sheet)
{
    look();
    const auto pressed = reading_.draw(sheet, kind_.empty() ? say("Written last") : title_of(kind_), lines_,
                                       {"Back", "Older", "Newer", "One kind"});
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
    if (pressed.button == "Back")
        return go(Page::gone);
    if (pressed.button == "Older" && !newest_.empty())
        ++older_;
    if (pressed.button == "Newer" && older_ > 0)
        --older_;
    if (!pressed.button.empty())
        reading_.back_to_the_top();
    if (pressed.button == "One kind")
        return go(Page::kind);
    if (!pressed.line || *pressed.line >= newest_.size())
        return;
    old_ = newest_[*pressed.line];
    go(Page::how);
}

// Those that the book has, by name.
void CorrectPage::choose_kind(Sheet& sheet)
{
    if (kinds_.empty())
        for (const records::Kind& each : records::kinds())
            if (may_be_corrected(each.name) && !outside_.book.newest(each.name, 1).empty())
                kinds_.push_back(each.name);
    Choice choice{"Which kind of record?", "", {{"All of them", "", std::nullopt, kind_.empty()}}, false, "Back"};
    for (const std::string& each : kinds_)
        choice.options.push_back({title_of(each), "", std::nullopt, each == kind_});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed < choice.options.size()) {
        kind_ = *pressed == 0 ? "" : kinds_[*pressed - 1];
        older_ = 0;
    }
    kinds_.clear();
    go(Page::list);
}

void CorrectPage::how(Sheet& sheet)
{
    const auto pressed = ask(sheet, {"How is it put right?",
                                     name_of_record(*old_),
                                     {{"It says something else", "what was typed or seen wrong", std::nullopt},
                                      {"Hold to make it void", "", std::nullopt, false, true}},
                                     true,
                                     "Back"});
    if (!pressed)
        return;
    if (*pressed == 2)
        return go(Page::list);
    is_void_ = *pressed == 1;
    why_.emplace(outside_, "Why?", reasons_to_correct, true);
    if (is_void_)
        return go(Page::why);
    const Json& schema = records::find_kind(old_->entry.kind)->schema;
    form_.emplace(outside_, schema.at("title").get<std::string>(), schema, old_->entry.body, "Go on");
    go(Page::form);
}

void CorrectPage::form(Sheet& sheet)
{
    const auto left = form_->draw(sheet, "");
    if (left != FormPage::Left::nothing)
        go(left == FormPage::Left::done ? Page::why : Page::how);
}

void CorrectPage::why(Sheet& sheet)
{
    const auto left = why_->draw(sheet, "");
    if (left != Phrases::Left::nothing)
        go(left == Phrases::Left::said ? Page::who : is_void_ ? Page::how : Page::form);
}

void CorrectPage::who(Sheet& sheet)
{
    auto people = outside_.book.keys("person");
    std::erase_if(people, [&](const std::string& each) {
        return !desk::is_entitled(outside_.book, desk::entry(outside_.hand(each), "correction", old_->entry.about,
                                                             {{"corrects", old_->hash}}));
    });
    const Choice choice = choice_of_people(outside_.book, "Who puts it right?", people,
                                           "Nobody is admitted who may. People admits them.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go(Page::why);
    outside_.signing.once(people[*pressed], [this, person = people[*pressed]] { write(person); });
}

// Who may not is told so, and the page stays.
void CorrectPage::write(const std::string& person)
{
    Json body{{"corrects", old_->hash}, {"why", why_->said()}};
    if (is_void_)
        body["void"] = true;
    else
        body["body"] = form_->body();
    go(Page::who);
    desk::write(outside_.book, {desk::entry(outside_.hand(person), "correction", old_->entry.about, std::move(body))});
    go(Page::done);
}

bool CorrectPage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::list: list(sheet); break;
    case Page::kind: choose_kind(sheet); break;
    case Page::how: how(sheet); break;
    case Page::form: form(sheet); break;
    case Page::why: why(sheet); break;
    case Page::who: who(sheet); break;
    case Page::done:
        if (ask(sheet, {"It is put right",
                        "The older record stays in the book, with who put it right and why.",
                        {{"Understood", "", std::nullopt}},
                        false,
                        ""}))
            go(Page::list);
        break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
