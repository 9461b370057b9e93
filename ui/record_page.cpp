#include "record_page.hpp"

#include "form_words.hpp"
#include "kinds.hpp"
#include "people.hpp"
#include "plan_in_force.hpp"
#include "title_block.hpp"
#include "written.hpp"

#include <algorithm>
#include <array>

namespace cotter::ui {

using records::Json;

namespace {

// Facts that a newer record of the kind replaces: what stands is the start of what is written.
std::string fact_replaced_by(const std::string& kind)
{
    constexpr std::array<std::pair<const char*, const char*>, 8> facts{{{"unit", "unit"},
                                                                        {"pipe", "pipe"},
                                                                        {"chart", "chart"},
                                                                        {"model", "model"},
                                                                        {"check_sheet", "check_sheet"},
                                                                        {"site", "site"},
                                                                        {"machine_set_up", "set_up"},
                                                                        {"rigging", "rigging"}}};
    for (const auto& [each, fact] : facts)
        if (kind == each)
            return fact;
    return "";
}

// The paper has an id of its own; whose it is stands in it.
bool is_paper_of_a_unit(const std::string& kind)
{
    return kind == "examination_report" || kind == "declaration" || kind == "interim_statement";
}

// At the end; a copy that is typed from comes first.
bool takes_photo(const Json& schema) { return schema.at("properties").contains("photos"); }
bool has_copy(const Json& schema) { return schema.at("properties").contains("copy"); }

bool is_about_a_mark(const std::string& kind) { return kind == "trench_inspection" || kind == "fall_of_ground"; }

} // namespace

RecordPage::RecordPage(const Outside& outside, std::string kind, Json begun, std::string about)
    : outside_{outside}, was_given_kind_{!kind.empty()}, page_{kind.empty()    ? Page::menu
                                                               : about.empty() ? Page::about
                                                                               : Page::who},
      begun_(std::move(begun)), kind_{std::move(kind)}, about_{std::move(about)}, units_{outside}, menu_{outside}
{
}

void RecordPage::go(Page page)
{
    page_ = page;
    turned_ = 0;
}

std::optional<std::size_t> RecordPage::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person_));
    return pressed;
}

const Json& RecordPage::schema() const { return records::find_kind(kind_)->schema; }

void RecordPage::menu(Sheet& sheet)
{
    const auto chosen = menu_.draw(sheet);
    if (!chosen)
        return;
    kind_ = *chosen;
    go(chosen->empty() ? Page::gone : Page::about);
}

// To where the kind was chosen.
void RecordPage::go_back() { go(was_given_kind_ ? Page::gone : Page::menu); }

std::vector<std::string> RecordPage::known_things() const
{
    std::vector<std::string> ids;
    if (is_about_a_mark(kind_))
        for (const Json& each :
             desk::places_in_force(outside_.book, desk::current_site(outside_.book), outside_.hand("").day))
            ids.push_back(each.value("id", ""));
    const std::string fact = is_paper_of_a_unit(kind_)             ? "unit"
                             : schema().contains("x-about-refers") ? schema()["x-about-refers"].get<std::string>()
                                                                   : fact_replaced_by(kind_);
    const Json roles = schema().value("x-about-role", Json::array());
    if (!fact.empty())
        for (const auto& each : outside_.book.facts(fact))
            if (roles.empty() || std::find(roles.begin(), roles.end(), each.doc.value("role", "")) != roles.end())
                ids.push_back(each.key.key);
    return ids;
}

bool RecordPage::is_about_a_unit() const
{
    return is_paper_of_a_unit(kind_) || schema().value("x-about-refers", "") == "unit";
}

void RecordPage::about_a_unit(Sheet& sheet)
{
    const bool paper = is_paper_of_a_unit(kind_);
    const auto chosen =
        units_.draw(sheet,
                    {paper ? "Of which unit?" : "About which one?", "", [this] { return known_things(); },
                     [this](const std::string& id) { return role_of(outside_.book, id); }},
                    title_block(outside_, "WRITES", person_));
    if (!chosen)
        return;
    if (chosen->empty())
        return go_back();
    unit_ = paper ? *chosen : "";
    about_ = paper ? kind_ + "-" + std::to_string(outside_.now().count()) : *chosen;
    go(Page::who);
}

// What it is about; a thing that the book does not know yet has an id of its own.
void RecordPage::about(Sheet& sheet)
{
    if (is_about_a_unit() && begun_.empty())
        return about_a_unit(sheet);
    const bool may_be_new = !schema().contains("x-about-refers") && !is_about_a_mark(kind_);
    const auto ids = known_things();
    if (may_be_new && (ids.empty() || !begun_.empty())) {
        about_ = kind_ + "-" + std::to_string(outside_.now().count());
        return go(Page::who);
    }
    Choice choice{"About which one?", schema().at("x-about").get<std::string>(), {}, false, "Back"};
    for (const std::string& each : ids)
        choice.options.push_back(
            {is_about_a_mark(kind_) ? say("Mark {}", each) : desk::shown_name(outside_.book, each), "", std::nullopt});
    if (may_be_new)
        choice.options.push_back({"A new one", "not in the book yet", std::nullopt});
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == choice.options.size())
        return go_back();
    unit_.clear();
    about_ = *pressed < ids.size() ? ids[*pressed] : kind_ + "-" + std::to_string(outside_.now().count());
    go(Page::who);
}

void RecordPage::who(Sheet& sheet)
{
    const auto people = who_may_write(outside_.book, kind_);
    const Choice choice =
        choice_of_people(outside_.book, "Who says so?", people, "Nobody is admitted who may. People admits them.");
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == people.size())
        return go_back();
    person_ = people[*pressed];
    begin();
}

// The site is this one; what stands is kept unless it is changed.
Json RecordPage::first_body() const
{
    const std::string fact = fact_replaced_by(kind_);
    Json body = fields_of(schema(), fact.empty() ? Json::object() : desk::doc(outside_.book, fact, about_));
    body.update(begun_);
    const Json& fields = schema().at("properties");
    if (fields.contains("site") && !body.contains("site") && kind_ != "returned") // that is where it came from
        body["site"] = desk::current_site(outside_.book);
    if (!unit_.empty() && fields.contains("units"))
        body["units"] = Json::array({unit_});
    else if (!unit_.empty() && fields.contains("unit"))
        body["unit"] = unit_;
    return body;
}

// A report that says neither when, nor by whom, nor whether it is safe would only push out one that does.
Json RecordPage::typed_schema() const
{
    Json typed = schema();
    if (kind_ == "examination_report")
        for (const char* field : {"examined", "examiner", "safe"})
            typed["required"].push_back(field);
    return typed;
}

void RecordPage::begin()
{
    form_.emplace(outside_, schema().at("title").get<std::string>(), typed_schema(), first_body(), "Sign it");
    photo_.emplace(outside_, kind_ == "examination_report" ? "The copy: a photo of the whole report" : "A photo of it");
    go(has_copy(schema()) ? Page::photo : Page::form);
}

void RecordPage::form(Sheet& sheet)
{
    const auto left = form_->draw(sheet, person_, &paper_);
    if (left == FormPage::Left::back)
        go_back();
    if (left == FormPage::Left::done)
        outside_.signing.once(person_, [this] { takes_photo(schema()) ? go(Page::photo) : write(); });
}

void RecordPage::photo(Sheet& sheet)
{
    const auto left = photo_->draw(sheet, person_);
    if (left == PhotoPage::Left::nothing)
        return;
    if (left == PhotoPage::Left::back)
        return go(has_copy(schema()) ? Page::who : Page::form);
    picture_ = left == PhotoPage::Left::kept ? photo_->name() : "";
    go(Page::form); // where it is said what was refused
    if (!has_copy(schema()))
        return write();
    if (!picture_.empty())
        paper_.show(outside_, photo_->bytes());
}

void RecordPage::write()
try {
    Json body = form_->body();
    if (!picture_.empty() && schema().at("properties").contains("photos"))
        body["photos"] = Json::array({picture_});
    else if (!picture_.empty())
        body["copy"] = {{"legible", true}, {"here", true}, {"sha256", picture_}};
    const desk::Hand hand = outside_.hand(person_);
    std::vector<records::Entry> entries{desk::entry(hand, kind_, about_, body)};
    const std::string damage = kind_ == "returned" ? body.value("damage", "") : "";
    stops_ = !damage.empty();
    if (stops_) // until it is looked at and cleared
        entries.push_back(desk::find_a_defect(hand, about_, "stop", damage, {}));
    desk::write(outside_.book, std::move(entries));
    go(Page::written);
} catch (const records::FormError& why) {
    form_->say(why.what());
}

void RecordPage::written(Sheet& sheet)
{
    if (ask(sheet, {"It is written",
                    words::in_language(schema().at("title").get<std::string>()) + "." +
                        (stops_ ? " " + say("{} is stopped", desk::label_of(outside_.book, about_)) + "." : ""),
                    {},
                    false,
                    "Back"}))
        go(Page::gone);
}

bool RecordPage::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::menu: menu(sheet); break;
    case Page::about: about(sheet); break;
    case Page::who: who(sheet); break;
    case Page::form: form(sheet); break;
    case Page::photo: photo(sheet); break;
    case Page::written: written(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
