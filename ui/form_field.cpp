#include "form_field.hpp"

#include "field.hpp"
#include "field_unit.hpp"
#include "form_words.hpp"
#include "number_text.hpp"
#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

using records::Json;

namespace {

const std::vector<std::string> ways_out{"Leave it", "Not known", "Take it"};

} // namespace

FormField::FormField(const Outside& outside, const Json& schema, std::string field, const Json& value)
    : outside_{outside}, schema_{schema}, field_{std::move(field)}, value_(value)
{
    if (value.is_number_integer())
        pad_ = {true, desk::number_text(value.get<std::int64_t>(), desk::unit_of(field_).power)};
    if (value.is_string())
        text_ = value.get<std::string>();
}

FormField::Left FormField::take(Json value)
{
    value_ = std::move(value);
    return Left::changed;
}

std::vector<FormField::Option> FormField::options() const
{
    std::vector<Option> all;
    if (schema_.value("type", "") == "boolean")
        return {{true, "Yes"}, {false, "No"}};
    for (const Json& each : schema_.value("enum", Json::array()))
        all.push_back({each, value_in_words(outside_.book, schema_, field_, each)});
    if (schema_.contains("x-refers"))
        for (const std::string& each : ids_for(outside_.book, schema_))
            all.push_back({each, id_in_words(outside_.book, schema_, each)});
    return all;
}

FormField::Left FormField::choose(Sheet& sheet, const std::string& person)
{
    const std::vector<Option> all = options();
    const bool yes_or_no = schema_.value("type", "") == "boolean"; // opposites stand apart
    Choice choice{name_of(schema_, field_),
                  all.empty() ? "Nothing of this kind is in the book yet." : "",
                  {},
                  yes_or_no,
                  "Leave it"};
    for (const Option& each : all)
        choice.options.push_back({each.words, value_ == each.value ? "as it stands" : "", std::nullopt});
    choice.options.push_back({"Not known", "", std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (!pressed)
        return Left::nothing;
    if (*pressed > all.size())
        return Left::as_it_was;
    return take(*pressed == all.size() ? Json{} : all[*pressed].value);
}

std::string FormField::range_in_words() const
{
    if (!schema_.contains("minimum"))
        return "";
    const desk::FieldUnit unit = desk::unit_of(field_);
    return say("{} to {} {}", words::decimal(desk::number_text(schema_["minimum"].get<std::int64_t>(), unit.power)),
               words::decimal(desk::number_text(schema_["maximum"].get<std::int64_t>(), unit.power)), unit.text);
}

FormField::Left FormField::number(Sheet& sheet)
{
    const desk::FieldUnit unit = desk::unit_of(field_);
    const auto least = schema_.value("minimum", std::int64_t{0}), greatest = schema_.value("maximum", std::int64_t{0});
    const auto pressed = pad_.draw(sheet, {name_of(schema_, field_), said_.empty() ? range_in_words() : said_,
                                           unit.text, least<0, unit.power> 0, ways_out});
    if (!pressed)
        return Left::nothing;
    if (*pressed < 2)
        return *pressed == 0 ? Left::as_it_was : take(Json{});
    const auto typed = desk::whole(pad_.typed, unit.power, desk::Rounding::none);
    if (typed && least <= *typed && *typed <= greatest)
        return take(*typed);
    said_ = say("Accepted is {}", range_in_words());
    return Left::nothing;
}

FormField::Left FormField::date(Sheet& sheet)
{
    if (!wheel_)
        wheel_.emplace(outside_.hand("").day, rules::parse_day(text_));
    const auto pressed =
        wheel_->draw(sheet, name_of(schema_, field_), "Turn the wheels, or type the day: 20261125 or 25112026.",
                     ways_out, outside_.hand("").day);
    if (!pressed)
        return Left::nothing;
    if (*pressed < 2)
        return *pressed == 0 ? Left::as_it_was : take(Json{});
    return take(rules::to_string(wheel_->day()));
}

FormField::Left FormField::text(Sheet& sheet, const std::string& person)
{
    const Choice choice{name_of(schema_, field_), "", {}, false, "Leave it"};
    const auto pressed = ui::draw(sheet, choice, turned_);
    const bool enter = field(sheet, field_, {6, 30, std::min(sheet.width() - 12, 180.0), 12}, text_);
    const double y = 50, w = 40;
    const bool unknown = sheet.button("Not known", {6, y, w, glove.target});
    const bool taken = sheet.button("Take it", {6 + w + glove.gap, y, w, glove.target});
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (pressed)
        return Left::as_it_was;
    if (unknown || ((taken || enter) && text_.empty()))
        return take(Json{});
    return taken || enter ? take(text_) : Left::nothing;
}

FormField::Left FormField::draw(Sheet& sheet, const std::string& person)
{
    const std::string type = schema_.value("type", "");
    if (type == "boolean" || schema_.contains("enum") || schema_.contains("x-refers"))
        return choose(sheet, person);
    if (type != "integer" && schema_.value("format", "") != "date")
        return text(sheet, person);
    const Left left = type == "integer" ? number(sheet) : date(sheet);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    return left;
}

} // namespace cotter::ui
