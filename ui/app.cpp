#include "app.hpp"

namespace cotter::ui {

namespace {

constexpr const char* caution =
    "Cotter supports, and never replaces, the lift plan, the maker's instructions, local law and competent people.";

} // namespace

App::App(Outside outside, Door door)
    : outside_{std::move(outside)}, door_{door}, cab_{outside_}, site_{outside_}, yard_{outside_}
{
}

void App::first_screen(Sheet& sheet)
{
    const Choice choice{"Cotter",
                        caution,
                        {{"Cab", "plant operator: check, pin, lift", std::nullopt},
                         {"Site", "manager, supervisor: due, stopped, people", std::nullopt},
                         {"Yard", "hire desk, fitter: units and papers", std::nullopt}},
                        false,
                        ""};
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "PLACE", ""));
    if (pressed)
        door_ = *pressed == 0 ? Door::cab : *pressed == 1 ? Door::site : Door::yard;
}

// One clear line; nothing was written.
void App::trouble(Sheet& sheet)
{
    const Choice choice{"That could not be done", trouble_, {{"Back", "", std::nullopt}}, false, ""};
    if (ui::draw(sheet, choice, turned_))
        trouble_.clear();
    ui::draw(sheet, title_block(outside_, "PLACE", ""));
}

void App::draw_door(Sheet& sheet)
{
    bool stays = true;
    switch (door_) {
    case Door::none: return first_screen(sheet);
    case Door::cab: stays = cab_.draw(sheet); break;
    case Door::site: stays = site_.draw(sheet); break;
    case Door::yard: stays = yard_.draw(sheet); break;
    }
    if (!stays)
        door_ = Door::none;
}

void App::draw(Sheet& sheet)
{
    if (!trouble_.empty())
        return trouble(sheet);
    try {
        draw_door(sheet);
    } catch (const std::exception& e) {
        trouble_ = e.what();
    }
}

void frame(App& app, const Theme& theme, const Spy& spy)
{
    ImGui::GetIO().ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard; // arrows and space
    ImGui::NewFrame();
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0);
    ImGui::Begin("sheet", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                     ImGuiWindowFlags_NoBringToFrontOnFocus);
    {
        Sheet sheet{theme, spy};
        app.draw(sheet);
    }
    ImGui::End();
    ImGui::PopStyleVar(2);
    ImGui::Render();
}

} // namespace cotter::ui
