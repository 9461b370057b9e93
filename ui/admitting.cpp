#include "admitting.hpp"

#include "entitled.hpp"
#include "field.hpp"
#include "local_time.hpp"
#include "pins.hpp"
#include "title_block.hpp"
#include "written.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

namespace {

const std::vector<std::pair<std::string, std::string>> all_roles{
    {"operator", "Operator"},    {"signaller", "Slinger, signaller"}, {"supervisor", "Lifting supervisor"},
    {"manager", "Site manager"}, {"appointed", "Appointed person"},   {"competent", "Competent person"},
    {"fitter", "Fitter"},        {"hire_desk", "Hire desk"},          {"gateman", "Gateman"}};

std::set<std::string> set_of(const Json& admission, const char* list)
{
    return admission.value(list, std::set<std::string>{});
}

} // namespace

void Admitting::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> Admitting::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "ADMITTED BY", by_));
    return pressed;
}

void Admitting::who(Sheet& sheet)
{
    const auto people = outside_.book.facts("person");
    Choice choice{"Who is admitted?", "", {}, false, "Leave it"};
    choice.options.push_back({"Somebody new", "not in the book yet", std::nullopt});
    for (const auto& each : people)
        if (each.key.key != by_)
            choice.options.push_back(
                {desk::shown_name(outside_.book, each.key.key),
                 !each.doc.value("admission", Json::object()).empty() ? "is admitted; change it" : "not admitted yet",
                 std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go(Page::gone);
    is_new_ = *pressed == 0;
    if (is_new_)
        return go(Page::name);
    std::vector<std::string> ids;
    for (const auto& each : people)
        if (each.key.key != by_)
            ids.push_back(each.key.key);
    person_ = ids[*pressed - 1];
    const Json admission = desk::doc(outside_.book, "person", person_).value("admission", Json::object());
    roles_ = set_of(admission, "roles");
    models_ = set_of(admission, "models");
    settings_ = set_of(admission, "setting_models");
    go(Page::card);
}

void Admitting::name(Sheet& sheet)
{
    const auto pressed =
        ask(sheet, {"What is the name?", "First letter and family name, as on the card.", {}, false, "Leave it"});
    const double w = std::min(sheet.width() - 12, 120.0);
    const bool enter = field(sheet, "name", {6, 36, w, 12}, name_);
    const bool goes_on =
        !name_.empty() && (sheet.button("Go on", {6, 54, 60, glove.target + 5}, figures::Sign::to_do) || enter);
    if (pressed)
        return go(Page::gone);
    if (!goes_on)
        return;
    person_ = desk::new_person_id();
    go(Page::card);
}

void Admitting::card(Sheet& sheet)
{
    const std::string name = is_new_ ? name_ : desk::shown_name(outside_.book, person_);
    const auto pressed = ask(sheet, {say("{}: is the card seen?", name),
                                     "Name, picture, categories and last day, on the card itself.",
                                     {{"Seen", "it is the person's own", figures::Sign::in_order}},
                                     false,
                                     "Leave it"});
    if (pressed)
        go(*pressed == 0 ? Page::roles : Page::gone);
}

bool Admitting::several(Sheet& sheet, const std::string& question, const std::string& hint,
                        const std::vector<std::pair<std::string, std::string>>& all, std::set<std::string>& chosen,
                        Page back)
{
    Choice choice{question, hint, {}, false, "Back"};
    choice.options.push_back({"Go on", say("{} chosen", chosen.size()), figures::Sign::to_do});
    for (const auto& [id, words] : all)
        choice.options.push_back({words, chosen.contains(id) ? say("yes") : say("no"),
                                  chosen.contains(id) ? std::optional{figures::Sign::in_order} : std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return false;
    if (*pressed == choice.options.size()) {
        go(back);
        return false;
    }
    if (*pressed == 0)
        return true;
    const std::string& id = all[*pressed - 1].first;
    if (chosen.erase(id) == 0)
        chosen.insert(id);
    return false;
}

void Admitting::roles(Sheet& sheet)
{
    const bool goes_on = several(sheet, "For which work?", said_, all_roles, roles_, Page::card);
    said_ = goes_on && roles_.empty() ? say("Choose at least one: who is admitted for nothing may do nothing.") : said_;
    if (!goes_on || roles_.empty())
        return;
    said_.clear();
    go(Page::models);
}

std::vector<std::pair<std::string, std::string>> Admitting::known_models(bool that_adjust) const
{
    std::vector<std::pair<std::string, std::string>> all;
    for (const auto& each : outside_.book.facts("model"))
        if (!that_adjust || each.doc.value("adjusts", false))
            all.emplace_back(each.key.key, each.doc.value("name", each.key.key));
    return all;
}

void Admitting::models(Sheet& sheet)
{
    const auto known = known_models(false);
    if (several(sheet, "Familiarised on which?",
                known.empty() ? "No model is in this book yet: Record, Papers and data, A model. Until then nobody is "
                                "authorised for one."
                              : "Machine, hitch and attachment: shown and tried, here.",
                known, models_, Page::roles))
        go(Page::settings);
}

void Admitting::settings(Sheet& sheet)
{
    if (several(sheet, "May change or look at the setting of which?", "Trained on the model's own steps.",
                known_models(true), settings_, Page::models))
        desk::current_site(outside_.book).empty() ? go(Page::site) : admit();
}

void Admitting::site(Sheet& sheet)
{
    const auto pressed = ask(sheet, {"What is this site called?",
                                     say("Its time zone is {}, as this device's.", desk::zone_here()),
                                     {},
                                     false,
                                     "Leave it"});
    const bool enter = field(sheet, "site", {6, 36, std::min(sheet.width() - 12, 160.0), 12}, site_name_);
    const bool goes_on =
        !site_name_.empty() && (sheet.button("Go on", {6, 54, 60, glove.target + 5}, figures::Sign::to_do) || enter);
    if (pressed)
        return go(Page::gone);
    if (goes_on)
        admit();
}

// The person and the admission in one go; then the PIN.
void Admitting::admit()
{
    const std::string by = by_.empty() ? person_ : by_;
    const desk::Hand hand = outside_.hand(by);
    std::vector<records::Entry> entries;
    std::string site = desk::current_site(outside_.book);
    if (site.empty()) {
        site = "site-" + std::to_string(outside_.now().count());
        entries.push_back(entry(hand, "site", site, {{"name", site_name_}, {"zone", desk::zone_here()}}));
    }
    if (is_new_)
        entries.push_back(entry(hand, "person", person_, {{"name", name_}}));
    entries.push_back(entry(
        hand, "admission", person_,
        {{"site", site}, {"card_seen", true}, {"roles", roles_}, {"models", models_}, {"setting_models", settings_}}));
    desk::write(outside_.book, std::move(entries));
    go(Page::gone);
    if (!desk::are_pins_asked(outside_.book) || desk::has_pin(outside_.book, person_))
        return;
    if (by_.empty())
        outside_.signing.in(person_, [] {});
    else
        outside_.signing.choose(by_, person_, [] {});
}

bool Admitting::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::who: who(sheet); break;
    case Page::name: name(sheet); break;
    case Page::card: card(sheet); break;
    case Page::roles: roles(sheet); break;
    case Page::models: models(sheet); break;
    case Page::settings: settings(sheet); break;
    case Page::site: site(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
