#include "unit_choice.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr std::size_t few = 11, many = 200; // few: two pages; many: nobody turns so many

} // namespace

bool has_digits(const std::string& text, const std::string& digits)
{
    std::string own;
    std::copy_if(text.begin(), text.end(), std::back_inserter(own), [](char c) { return '0' <= c && c <= '9'; });
    return own.find(digits) != std::string::npos;
}

std::string role_of(const records::Book& book, const std::string& unit)
{
    return words::in_language(desk::doc(book, "unit", unit).value("role", ""));
}

void UnitChoice::look(const Asked& asked)
{
    const std::string of = looked_at(outside_) + " " + digits_;
    if (of == looked_of_)
        return;
    looked_of_ = of;
    all_ = asked.ids();
    types_ = types_ || (all_.size() > many && digits_.empty());
    shown_.clear();
    options_.clear();
    if (types_)
        return;
    for (const std::string& each : all_)
        if (const std::string label = desk::label_of(outside_.book, each);
            has_digits(label, digits_) && shown_.size() < many) {
            shown_.push_back(each);
            options_.push_back({label, asked.more ? asked.more(each) : "", std::nullopt});
        }
}

std::optional<std::string> UnitChoice::type(Sheet& sheet, const Asked& asked, const TitleBlock& block)
{
    const auto pressed = pad_.draw(
        sheet, {asked.question, "The digits of its tag, or some of them.", "", false, false, {"Back", "Find"}});
    ui::draw(sheet, block);
    if (!pressed)
        return std::nullopt;
    types_ = false;
    looked_of_.clear();
    if (*pressed == 0)
        return all_.size() > many ? std::optional{std::string{}} : std::nullopt;
    digits_ = pad_.typed;
    return std::nullopt;
}

std::optional<std::string> UnitChoice::draw(Sheet& sheet, const Asked& asked, const TitleBlock& block)
{
    look(asked);
    if (types_)
        return type(sheet, asked, block);
    Choice choice{asked.question, asked.hint, options_, false, asked.back};
    const bool by_digits = all_.size() > few || !digits_.empty();
    if (by_digits)
        choice.options.insert(
            choice.options.begin(),
            {"By its digits", digits_.empty() ? "typed on a pad" : say("now: {}", digits_), std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, block);
    if (!pressed)
        return std::nullopt;
    if (by_digits && *pressed == 0) {
        types_ = true;
        digits_.clear();
        pad_ = {};
        return std::nullopt;
    }
    const std::size_t i = *pressed - (by_digits ? 1 : 0);
    return i < shown_.size() ? shown_[i] : "";
}

} // namespace cotter::ui
