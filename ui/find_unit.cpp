#include "find_unit.hpp"

#include "amounts.hpp"
#include "board_sign.hpp"
#include "finding_words.hpp"
#include "place_words.hpp"
#include "title_block.hpp"
#include "unit_choice.hpp"

#include <algorithm>
#include <cctype>
#include <utility>

namespace cotter::ui {

namespace {

constexpr double pause = 5; // seconds after which a new tag begins
constexpr std::size_t least = 2, most = 40;

std::string plain(const std::string& text)
{
    std::string kept;
    for (const char c : text)
        if (std::isalnum(static_cast<unsigned char>(c)) != 0)
            kept += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return kept;
}

bool is_digits(const std::string& typed)
{
    return std::none_of(typed.begin(), typed.end(), [](unsigned char c) { return std::isalpha(c) != 0; });
}

} // namespace

bool FindUnit::listen(bool digits_are_taken)
{
    const ImGuiIO& io = ImGui::GetIO();
    if (io.WantTextInput) { // a field has the keyboard
        typed_.clear();
        return false;
    }
    const double now = outside_.ticks();
    if (now - typed_at_ > pause)
        typed_.clear();
    bool ends = is_key_pressed(ImGuiKey_Enter);
    for (const ImWchar each : io.InputQueueCharacters) {
        ends = ends || each == '\r';
        if (each > ' ' && each < 0x7F && typed_.size() < most) {
            typed_ += static_cast<char>(each);
            typed_at_ = now;
        }
    }
    if (!ends)
        return false;
    const std::string typed = std::exchange(typed_, "");
    if (outside_.book.keys("unit").empty()) // there is none to find
        return false;
    if (plain(typed).size() < least || (digits_are_taken && is_digits(typed)))
        return false;
    asked_ = typed;
    reading_.back_to_the_top();
    return is_open_ = true;
}

void FindUnit::add_unit(const desk::BoardRow& row)
{
    const auto naming = [&](const std::string& id) { return desk::shown_name(outside_.book, id); };
    lines_.push_back({true, std::nullopt, row.label + (row.model.empty() ? "" : " \u00b7 " + row.model), ""});
    lines_.push_back(
        {false, sign_of(row),
         row.setting.empty() ? words::in_language(row.kind)
                             : say("{}, set to {}", words::in_language(row.kind), row.setting),
         (row.latest ? say("in date to {}", words::long_day(*row.latest)) : say("no examination on record")) + ", " +
             say(row.evidence_here ? "copy here" : "no copy here") + " \u00b7 " +
             place_in_words(outside_.book, row.place) + " \u00b7 " + row.owner});
    for (const rules::Finding& each : row.findings) {
        const words::Sentence sentence = words::says(each, {}, naming);
        const auto weighs = weight(each.code);
        lines_.push_back({false,
                          weighs == rules::Weight::stop      ? std::optional{figures::Sign::stop}
                          : weighs == rules::Weight::caution ? std::optional{figures::Sign::warning}
                                                             : std::nullopt,
                          sentence.headline,
                          sentence.detail + ". " + words::in_language(std::string{words::clears(each.code)})});
    }
}

// Tags that begin so, or have these digits; capitals, strokes and spaces are no difference.
bool FindUnit::is_asked_for(const std::string& tag) const
{
    return is_digits(asked_) ? has_digits(tag, plain(asked_)) : plain(tag).starts_with(plain(asked_));
}

void FindUnit::look_at(const std::string& unit)
{
    const std::string tag = desk::doc(outside_.book, "unit", unit).value("tag", unit);
    if (!is_asked_for(tag))
        return;
    const bool same = plain(tag) == plain(asked_);
    found_.insert(same ? found_.begin() + static_cast<std::ptrdiff_t>(same_++) : found_.end(), unit);
}

void FindUnit::add_units()
{
    constexpr std::size_t enough = 20;
    for (std::size_t i = 0; i < found_.size() && i < enough; ++i)
        add_unit(desk::board_row(outside_.book, found_[i], outside_.now(), outside_.hand("").day));
    if (found_.size() > enough)
        lines_.push_back({true, std::nullopt, say("{} more. Give more of the tag.", found_.size() - enough), ""});
    if (found_.empty() && !steps_.is_stopped()) // what was not looked at may have it
        lines_.push_back(
            {false, std::nullopt,
             say(is_digits(asked_) ? "No tag in this book has {}" : "No tag in this book begins with {}", asked_),
             "Read the plate again, or record the unit before anything hangs on it."});
}

void FindUnit::begin()
{
    units_ = outside_.book.keys("unit");
    steps_.begin(units_.size());
    found_.clear();
    lines_.clear();
    lines_of_.reset();
    same_ = 0;
    looked_of_ = looked_at(outside_, units_.size()) + asked_;
}

void FindUnit::look()
{
    if (looked_at(outside_, units_.size()) + asked_ != looked_of_)
        begin();
    steps_.work_on(outside_, [&](std::size_t i) { look_at(units_[i]); });
    if (steps_.is_working() || lines_of_ == steps_.done())
        return;
    lines_of_ = steps_.done();
    lines_.clear();
    add_units();
}

void FindUnit::type(Sheet& sheet)
{
    const auto pressed = pad_.draw(
        sheet, {"Which unit?", "The digits of its tag, or some of them.", "", false, false, {"Back", "Find"}});
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
    if (!pressed || (*pressed == 1 && pad_.typed.empty()))
        return;
    asks_ = false;
    is_open_ = *pressed == 1;
    asked_ = pad_.typed;
    pad_ = {};
    reading_.back_to_the_top();
}

void FindUnit::draw(Sheet& sheet)
{
    if (asks_)
        return type(sheet);
    look();
    std::vector<std::string> buttons{"Back"};
    if (const char* button = steps_.button(); *button)
        buttons.insert(buttons.begin(), button);
    const auto pressed =
        reading_.draw(sheet, *steps_.button() ? said_of(steps_) : say("Tag {}", asked_), lines_, buttons);
    steps_.press(pressed.button);
    if (pressed.button == "Back")
        is_open_ = false;
    ui::draw(sheet, title_block(outside_, "READ ONLY", ""));
}

} // namespace cotter::ui
