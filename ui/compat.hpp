#pragma once

// The one file that knows which Dear ImGui this is. Built on 1.86 (Debian 12).

#include <imgui.h>

namespace ImGui {
void ClearActiveID(); // of imgui_internal.h, which brings much along
}

namespace cotter::ui {

#if IMGUI_VERSION_NUM >= 18700
inline void feed_pointer(ImGuiIO& io, ImVec2 at) { io.AddMousePosEvent(at.x, at.y); }
inline void feed_press(ImGuiIO& io, bool down) { io.AddMouseButtonEvent(0, down); }
inline void map_keys(ImGuiIO&) {}
inline void feed_key(ImGuiIO& io, ImGuiKey key, bool down) { io.AddKeyEvent(key, down); }
inline bool is_key_pressed(ImGuiKey key) { return ImGui::IsKeyPressed(key); }
inline bool is_key_down(ImGuiKey key) { return ImGui::IsKeyDown(key); }
inline bool is_any_key_down()
{
    for (int key = ImGuiKey_NamedKey_BEGIN; key < ImGuiKey_NamedKey_END; ++key)
        if (ImGui::IsKeyDown(static_cast<ImGuiKey>(key)))
            return true;
    return false;
}
#else
inline void feed_pointer(ImGuiIO& io, ImVec2 at) { io.MousePos = at; }
inline void feed_press(ImGuiIO& io, bool down) { io.MouseDown[0] = down; }
inline void map_keys(ImGuiIO& io) // where no backend does
{
    for (int key = 0; key < ImGuiKey_COUNT; ++key)
        io.KeyMap[key] = key;
}
inline void feed_key(ImGuiIO& io, ImGuiKey key, bool down) { io.KeysDown[io.KeyMap[key]] = down; }
inline bool is_key_pressed(ImGuiKey key) { return ImGui::IsKeyPressed(ImGui::GetKeyIndex(key)); }
inline bool is_key_down(ImGuiKey key) { return ImGui::IsKeyDown(ImGui::GetKeyIndex(key)); }
inline bool is_any_key_down()
{
    for (const bool each : ImGui::GetIO().KeysDown)
        if (each)
            return true;
    return false;
}
#endif

// A line of text lets the keyboard go; the arrows then walk from it.
inline void give_keyboard_back() { ImGui::ClearActiveID(); }

// Escape is the way back, where no line of text has the keyboard.
inline bool goes_back() { return is_key_pressed(ImGuiKey_Escape) && !ImGui::GetIO().WantTextInput; }
// Enter takes what was typed, where the keyboard stands on no button.
inline bool takes_typed() { return is_key_pressed(ImGuiKey_Enter) && !ImGui::GetIO().NavVisible; }

} // namespace cotter::ui
