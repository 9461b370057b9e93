#include "field.hpp"

#include <algorithm>
#include <array>

namespace cotter::ui {

void field(Sheet& sheet, const std::string& name, const Box& box, std::string& text)
{
    constexpr std::size_t longest = 200; // bytes
    std::array<char, longest> typed{};
    std::copy_n(text.begin(), std::min(text.size(), longest - 1), typed.begin());
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
    if (!ImGui::IsAnyItemActive())
        ImGui::SetKeyboardFocusHere();
    if (ImGui::InputText(("##" + name).c_str(), typed.data(), typed.size()))
        text = typed.data();
    ImGui::PopItemWidth();
    ImGui::PopStyleColor(3);
    ImGui::PopStyleVar();
    ImGui::PopFont();
    sheet.frame(box, thick_mm);
}

} // namespace cotter::ui
