#pragma once

// The one file that knows which Dear ImGui this is. Built on 1.86 (Debian 12).

#include <imgui.h>

namespace cotter::ui {

#if IMGUI_VERSION_NUM >= 18700
inline void feed_pointer(ImGuiIO& io, ImVec2 at) { io.AddMousePosEvent(at.x, at.y); }
inline void feed_press(ImGuiIO& io, bool down) { io.AddMouseButtonEvent(0, down); }
#else
inline void feed_pointer(ImGuiIO& io, ImVec2 at) { io.MousePos = at; }
inline void feed_press(ImGuiIO& io, bool down) { io.MouseDown[0] = down; }
#endif

} // namespace cotter::ui
