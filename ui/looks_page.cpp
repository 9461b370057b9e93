#include "looks_page.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

struct Chosen {
    Choice::Option option;
    Looks then;
};

// Languages first: who cannot read this page looks for its own name.
std::vector<Chosen> all_of_them()
{
    std::vector<Chosen> all;
    const Looks now = looks();
    const auto add = [&](const std::string& words, const std::string& more, Looks then) {
        all.push_back({{words, more, std::nullopt, then == now}, then});
    };
    Looks then = now;
    for (const auto language : words::languages) {
        then = now;
        then.language = language;
        add(std::string{words::name_of(language)}, "", then);
    }
    then = now;
    then.night = !now.night;
    add(now.night ? "Day sheet" : "Night sheet", "for dark or bright surroundings", then);
    then = now;
    then.gloves = !now.gloves;
    add(now.gloves ? "Bare hands" : "Gloves", "in Site and Yard; the Cab is always for gloves", then);
    for (const int percent : text_sizes) {
        then = now;
        then.text_percent = percent;
        add(words::say("Text {} %", percent), "", then);
    }
    return all;
}

} // namespace

bool LooksPage::draw(Sheet& sheet)
{
    const auto all = all_of_them();
    Choice choice{"This glass", said_, {}, false, "Back"};
    for (const Chosen& each : all)
        choice.options.push_back(each.option);
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "PLACE", ""));
    if (!pressed)
        return true;
    if (*pressed == all.size())
        return false;
    const Looks& wanted = all[*pressed].then;
    choose_looks(outside_, wanted);
    said_ = looks().language == wanted.language ? "" : "The catalogue of this language is not beside the program.";
    return true;
}

} // namespace cotter::ui
