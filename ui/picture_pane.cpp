#include "picture_pane.hpp"

#include <algorithm>

namespace cotter::ui {

void PicturePane::clear() { *this = {}; }

bool PicturePane::show(const Outside& outside, const std::string& bytes)
{
    clear();
    picture_ = decode(bytes);
    if (picture_ && outside.texture)
        texture_ = outside.texture(*picture_);
    return has_picture();
}

void PicturePane::larger()
{
    zoom_ = is_largest() ? 1 : zoom_ * 2;
    moved_ = {0, 0};
}

// As one reads: to the right, then the next row from the left; from the end to the beginning.
void PicturePane::further()
{
    constexpr float step = 0.8F; // of what is seen
    const float least_x = std::min(0.0F, seen_.x - whole_.x), least_y = std::min(0.0F, seen_.y - whole_.y);
    const bool ends_row = moved_.x <= least_x + 1;
    if (!ends_row)
        moved_.x = std::max(least_x, moved_.x - step * seen_.x);
    else
        moved_ = {0, moved_.y <= least_y + 1 ? 0 : std::max(least_y, moved_.y - step * seen_.y)};
}

void PicturePane::draw(Sheet& sheet, const Box& box)
{
    sheet.fill(box, colours().sheet);
    sheet.frame(box, thin_mm);
    if (!picture_)
        return;
    const float w = sheet.theme().px(box.w), h = sheet.theme().px(box.h);
    const float fit = std::min(w / static_cast<float>(picture_->width), h / static_cast<float>(picture_->height));
    const float scale = fit * static_cast<float>(zoom_);
    const ImVec2 size{static_cast<float>(picture_->width) * scale, static_cast<float>(picture_->height) * scale};
    seen_ = {w, h};
    whole_ = size;
    const ImVec2 at{sheet.theme().px(box.x), sheet.theme().px(box.y)};
    if (ImGui::IsMouseDown(0) && ImGui::IsMouseHoveringRect(at, {at.x + w, at.y + h})) {
        const ImVec2 by = ImGui::GetIO().MouseDelta;
        moved_ = {std::clamp(moved_.x + by.x, std::min(0.0F, w - size.x), 0.0F),
                  std::clamp(moved_.y + by.y, std::min(0.0F, h - size.y), 0.0F)};
    }
    const ImVec2 in_the_middle{std::max(0.0F, (w - size.x) / 2), std::max(0.0F, (h - size.y) / 2)};
    sheet.picture(texture_, box, {moved_.x + in_the_middle.x, moved_.y + in_the_middle.y}, size);
}

} // namespace cotter::ui
