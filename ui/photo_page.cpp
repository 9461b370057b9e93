#include "photo_page.hpp"

#include "title_block.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

std::string file_name(const std::string& path) { return path.substr(path.find_last_of('/') + 1); }

} // namespace

PhotoPage::PhotoPage(const Outside& outside, std::string question, bool may_be_without)
    : outside_{outside}, question_{std::move(question)}, may_be_without_{may_be_without}
{
    find();
}

void PhotoPage::find()
{
    if (outside_.photos.watch)
        outside_.photos.watch();
    found_ = outside_.photos.found ? outside_.photos.found() : std::vector<std::string>{};
}

void PhotoPage::open(const std::string& path)
{
    const auto bytes = outside_.photos.bytes(path);
    const auto kept = bytes ? to_keep(*bytes) : std::nullopt;
    if (!kept || !pane_.show(outside_, *kept)) {
        said_ =
            say("{} is no picture that can be read. A JPEG or PNG file of up to 40 MB is accepted.", file_name(path));
        return;
    }
    bytes_ = *kept;
}

PhotoPage::Left PhotoPage::choose(Sheet& sheet, const std::string& person)
{
    find();
    const std::string how = found_.empty()
                                ? "None is found. Drop one on this window, or put it into the pictures' folder."
                                : "Dropped on this window, or in the pictures' folder; the newest first.";
    Choice choice{question_, said_.empty() ? how : said_, {}, false, "Back"};
    for (const std::string& each : found_)
        choice.options.push_back({file_name(each), "", std::nullopt});
    if (may_be_without_)
        choice.options.push_back({"Without", "no photo is taken along", std::nullopt});
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (!pressed)
        return Left::nothing;
    if (*pressed == choice.options.size())
        return Left::back;
    if (*pressed == found_.size())
        return Left::without;
    open(found_[*pressed]);
    return Left::nothing;
}

PhotoPage::Left PhotoPage::look(Sheet& sheet, const std::string& person)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    sheet.wrapped({6, 4, sheet.width() - 12, 0}, Letter::heading, "Is it sharp, and the right one?", 1);
    const double y = sheet.height() - title_height(sheet) - glove.target - glove.gap;
    pane_.draw(sheet, {6, head_mm, sheet.width() - 12, y - glove.gap - head_mm});
    const bool another = sheet.button("Another", {6, y, 40, glove.target});
    const bool taken = sheet.button("Take it", {sheet.width() - 46, y, 40, glove.target});
    ui::draw(sheet, title_block(outside_, "WRITES", person));
    if (another)
        pane_.clear();
    if (!taken)
        return Left::nothing;
    name_ = outside_.photos.keep(bytes_);
    return Left::kept;
}

PhotoPage::Left PhotoPage::draw(Sheet& sheet, const std::string& person)
{
    return pane_.has_picture() ? look(sheet, person) : choose(sheet, person);
}

} // namespace cotter::ui
