#include "field.hpp"

#include <algorithm>

#include <imgui_stdlib.h>

namespace cotter::ui {

namespace {

// A page that opens has not shown the field in the frame before.
bool wants_the_keyboard(const std::string& name)
{
    ImGuiStorage& kept = *ImGui::GetStateStorage();
    const ImGuiID shown = ImGui::GetID((name + " shown").c_str()), had = ImGui::GetID((name + " had").c_str());
    const int now = ImGui::GetFrameCount();
    if (kept.GetInt(shown, -10) < now - 1)
        kept.SetBool(had, false);
    kept.SetInt(shown, now);
    return !kept.GetBool(had) && !ImGui::IsAnyItemActive();
}

bool leaves()
{
    return is_key_pressed(ImGuiKey_Escape) || is_key_pressed(ImGuiKey_UpArrow) || is_key_pressed(ImGuiKey_DownArrow);
}

bool draw_input(const std::string& name, std::string& text)
{
    if (wants_the_keyboard(name))
        ImGui::SetKeyboardFocusHere();
    const std::string before = text;
    const bool enter = ImGui::InputText(("##" + name).c_str(), &text, ImGuiInputTextFlags_EnterReturnsTrue);
    if (ImGui::IsItemActive())
        ImGui::GetStateStorage()->SetBool(ImGui::GetID((name + " had").c_str()), true);
    if ((ImGui::IsItemActive() || ImGui::IsItemDeactivated()) && leaves()) {
        text = before; // what was typed stays
        give_keyboard_back();
    }
    return enter;
}

} // namespace

bool field(Sheet& sheet, const std::string& name, const Box& box, std::string& text)
{
    const Theme& theme = sheet.theme();
    const Face& face = theme.face(Letter::text);
    ImGui::PushFont(face.font);
    const float around = (theme.px(box.h) - ImGui::GetFontSize()) / 2;
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {theme.px(3), std::max(around, 0.0F)});
    ImGui::PushStyleColor(ImGuiCol_FrameBg, colours().sheet);
    ImGui::PushStyleColor(ImGuiCol_Text, colours().ink);
    ImGui::PushStyleColor(ImGuiCol_TextSelectedBg, colours().rule);
    ImGui::SetCursorScreenPos({theme.px(box.x), theme.px(box.y)});
    ImGui::PushItemWidth(theme.px(box.w));
    const bool enter = draw_input(name, text);
    ImGui::PopItemWidth();
    ImGui::PopStyleColor(3);
    ImGui::PopStyleVar();
    ImGui::PopFont();
    sheet.frame(box, thick_mm);
    return enter;
}

} // namespace cotter::ui
