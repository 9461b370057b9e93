#pragma once

// Types a body into a form, field by field, by what stands on the screen.

#include "field_unit.hpp"
#include "form_words.hpp"
#include "rig.hpp"

#include <string>

namespace cotter::tests {

using records::Json;

class Typist {
public:
    Typist(Rig& rig, const records::Book& book) : rig_{rig}, book_{book} {}

    void part(const Json& schema, const Json& body)
    {
        for (const auto& [key, value] : body.items()) {
            const Json inner = schema.contains("properties") ? schema["properties"].value(key, Json::object())
                                                             : schema["additionalProperties"];
            tap_line(schema.contains("properties") ? ui::name_of(inner, key) : key);
            enter(inner, key, value);
        }
    }

private:
    void enter(const Json& schema, const std::string& key, const Json& value)
    {
        if (value.is_object()) {
            part(schema, value);
            rig_.tap("Back");
        } else if (value.is_array()) {
            for (const Json& each : value) {
                rig_.tap("Add");
                enter(schema["items"], "", each);
            }
            rig_.tap("Back");
        } else
            leaf(schema, key, value);
    }

    void leaf(const Json& schema, const std::string& key, const Json& value)
    {
        if (value.is_boolean() || schema.contains("enum") || schema.contains("x-refers"))
            return choose(ui::value_in_words(book_, schema, key, value));
        std::string text = value.is_string() ? value.get<std::string>() : value.dump();
        if (value.is_number() && desk::unit_of(key).power == 3)
            text = std::to_string(value.get<double>() / 1000);
        if (schema.value("format", "") == "date")
            std::erase(text, '-');
        type(text);
        rig_.tap("Take it");
    }

    void choose(std::string words)
    {
        if (words == "yes" || words == "no")
            words[0] = static_cast<char>(words[0] - 'a' + 'A');
        for (int pages = 0; !rig_.target(words) && pages < 5; ++pages)
            rig_.tap("More");
        rig_.tap(words);
    }

    void type(const std::string& text)
    {
        rig_.frame();
        for (const char c : text) {
            ImGui::GetIO().AddInputCharacter(static_cast<unsigned>(c));
            rig_.frame();
        }
    }

    void tap_line(const std::string& name)
    {
        for (int pages = 0; pages < 4; ++pages)
            rig_.key(ImGuiKey_PageUp);
        for (int pages = 0; !rig_.target(name) && pages < 8; ++pages)
            rig_.key(ImGuiKey_PageDown);
        rig_.tap(name);
    }

    Rig& rig_;
    const records::Book& book_;
};

} // namespace cotter::tests
