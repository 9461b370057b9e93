#include "scroll.hpp"

#include "compat.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace cotter::ui {

namespace {

constexpr float least_speed = 20, decay = 3.5F; // px/s; per second

} // namespace

void Fling::drag(float moved, float seconds)
{
    if (seconds > 0)
        speed_ = 0.6F * speed_ + 0.4F * moved / seconds;
}

bool Fling::moving() const { return std::abs(speed_) > least_speed; }

float Fling::advance(float seconds)
{
    const float moved = speed_ * (1 - std::exp(-decay * seconds)) / decay;
    speed_ *= std::exp(-decay * seconds);
    if (!moving())
        speed_ = 0;
    return moved;
}

const char* TouchScroll::button() const { return most <= 0 ? "" : at >= most - 1 ? "To the top" : "Further down"; }

void TouchScroll::press(const std::string& button)
{
    if (button == "Further down")
        at = std::min(at + page, most);
    if (button == "To the top")
        at = 0;
}

void touch_scroll(TouchScroll& list, Sheet& sheet, const Box& area, float most)
{
    const Theme& theme = sheet.theme();
    const ImGuiIO& io = ImGui::GetIO();
    const ImVec2 min{theme.px(area.x), theme.px(area.y)}, max{theme.px(area.x + area.w), theme.px(area.y + area.h)};
    if (ImGui::IsMouseClicked(0)) {
        list.held = ImGui::IsMouseHoveringRect(min, max, false);
        list.dragging = false;
        list.fling.start();
    }
    if (list.held && ImGui::IsMouseDown(0)) {
        list.dragging = list.dragging || press_became_drag(theme);
        if (list.dragging) {
            list.at -= io.MouseDelta.y;
            list.fling.drag(-io.MouseDelta.y, io.DeltaTime);
        }
    } else {
        list.held = false;
        if (list.fling.moving())
            list.at += list.fling.advance(std::min(io.DeltaTime, 0.1F));
    }
    if (ImGui::IsMouseHoveringRect(min, max, false))
        list.at -= io.MouseWheel * theme.px(15);
    list.page = theme.px(area.h * 0.9);
    if (is_key_pressed(ImGuiKey_PageDown))
        list.at += list.page;
    if (is_key_pressed(ImGuiKey_PageUp))
        list.at -= list.page;
    if ((std::exchange(list.most, std::max(most, 0.0F)) > 0) != (most > 0)) // its button comes or goes
        sheet.draw_again_in(0);
    list.at = std::clamp(list.at, 0.0F, list.most);
    if (list.fling.moving())
        sheet.draw_again_in(0);
}

} // namespace cotter::ui
