#pragma once

// The one file that knows which Dear ImGui this is. Built on 1.86 (Debian 12).

#include <imgui.h>

namespace cotter::ui {

#if IMGUI_VERSION_NUM >= 18700
inline void feed_pointer(ImGuiIO& io, ImVec2 at) { io.AddMousePosEvent(at.x, at.y); }
inline void feed_press(ImGuiIO& io, bool down) { io.AddMouseButtonEvent(0, down); }
inline void map_keys(ImGuiIO&) {}
inline void feed_key(ImGuiIO& io, ImGuiKey key, bool down) { io.AddKeyEvent(key, down); }
inline bool is_key_pressed(ImGuiKey key) { return ImGui::IsKeyPressed(key); }
inline bool is_key_down(ImGuiKey key) { return ImGui::IsKeyDown(key); }
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
#endif

} // namespace cotter::ui
