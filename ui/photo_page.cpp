#include "photo_page.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

constexpr double look_again = 1; // s

std::string file_name(const std::string& path) { return path.substr(path.find_last_of('/') + 1); }

} // namespace

PhotoPage::PhotoPage(const Outside& outside, std::string question) : outside_{outside}, question_{std::move(question)}
{
    find();
}

void PhotoPage::find()
{
    if (outside_.ticks() - found_at_ < look_again)
        return;
    found_at_ = outside_.ticks();
    found_ = outside_.photos.found ? outside_.photos.found() : std::vector<std::string>{};
}

void PhotoPage::open(const std::string& path)
{
    const auto bytes = outside_.photos.bytes(path);
    const auto kept = bytes ? to_keep(*bytes) : std::nullopt;
    picture_ = kept ? decode(*kept) : std::nullopt;
    if (!picture_) {
        said_ =
            say("{} is no picture that can be read. A JPEG or PNG file of up to 40 MB is accepted.", file_name(path));
        return;
    }
    bytes_ = *kept;
    texture_ = outside_.texture ? outside_.texture(*picture_) : nullptr;
}

PhotoPage::Left PhotoPage::choose(Sheet& sheet, const std::string& person)
{
    find();
    const std::string how = found_.empty()
                                ? "None is found. Drop one on this window, or put it into the pictures' folder."
                                : "Dropped on this window, or in the pictures' folder; the newest first.";
    Choice choice{question_, said_.empty() ? how : said_, {}, false, "Without"};
    for (const std::string& each : found_)
        choice.options.push_back({file_name(each), "", std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (!pressed)
        return Left::nothing;
    if (*pressed == choice.options.size())
        return Left::without;
    open(found_[*pressed]);
    return Left::nothing;
}

void PhotoPage::draw_picture(Sheet& sheet, const Box& box) const
{
    sheet.fill(box, colours().sheet);
    sheet.frame(box, thin_mm);
    const float w = sheet.theme().px(box.w), h = sheet.theme().px(box.h);
    const float scale = std::min(w / static_cast<float>(picture_->width), h / static_cast<float>(picture_->height));
    const ImVec2 size{static_cast<float>(picture_->width) * scale, static_cast<float>(picture_->height) * scale};
    sheet.picture(texture_, box, {(w - size.x) / 2, (h - size.y) / 2}, size);
}

PhotoPage::Left PhotoPage::look(Sheet& sheet, const std::string& person)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    sheet.wrapped({6, 4, sheet.width() - 12, 0}, Letter::heading, "Is it sharp, and the right one?", 1);
    const double y = sheet.height() - title_height(sheet) - glove.target - glove.gap;
    draw_picture(sheet, {6, head_mm, sheet.width() - 12, y - glove.gap - head_mm});
    const bool another = sheet.button("Another", {6, y, 40, glove.target});
    const bool taken = sheet.button("Take it", {sheet.width() - 46, y, 40, glove.target});
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (another)
        picture_.reset();
    if (!taken)
        return Left::nothing;
    name_ = outside_.photos.keep(bytes_);
    return Left::kept;
}

PhotoPage::Left PhotoPage::draw(Sheet& sheet, const std::string& person)
{
    return picture_ ? look(sheet, person) : choose(sheet, person);
}

} // namespace cotter::ui
