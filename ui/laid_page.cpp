#include "laid_page.hpp"

#include "amounts.hpp"
#include "dimension.hpp"
#include "foot.hpp"
#include "number_text.hpp"
#include "title_block.hpp"

namespace cotter::ui {

namespace {

constexpr double line_height_mm = 22, text_left = 14;

std::string in_metres(std::int64_t mm) { return words::decimal(desk::number_text(mm, 3)) + " m"; }

std::string how_it_lies(const desk::LaidPipe& laid)
{
    std::string text = words::short_day(laid.day);
    if (laid.invert_mm)
        text += " \u00b7 " + say("invert {}", in_metres(*laid.invert_mm));
    if (const auto above = laid.above_planned_mm())
        text += ", " + words::from_planned(*above);
    if (laid.is_level_within() == false)
        text += ", " + say("outside the drawing's {} mm", *laid.level_tolerance_mm);
    if (!laid.bedding.empty())
        text += " \u00b7 " + laid.bedding;
    if (laid.gasket_seen)
        text += " \u00b7 " + say(*laid.gasket_seen ? "gasket seen" : "gasket not seen in its place");
    return text;
}

} // namespace

void LaidPage::look()
{
    if (const std::string of = outside_.book.state().head.hash; of != laid_of_) {
        laid_ = desk::laid_pipes(outside_.book, desk::current_site(outside_.book));
        laid_of_ = of;
    }
}

void LaidPage::draw_line(Sheet& sheet, const desk::LaidPipe& laid, const Box& box)
{
    const double w = box.w - text_left - 4, half = sheet.is_narrow() ? w : w * 0.55;
    if (!laid.is_in_order())
        sheet.sign(figures::Sign::stop, box.x + 7.5, box.y + 5, 7);
    const std::string head = say("{} at {}", desk::shown_name(outside_.book, laid.pipe), in_metres(laid.chainage_mm)) +
                             (laid.run.empty() ? "" : ", " + laid.run);
    sheet.wrapped({box.x + text_left, box.y + 2, half, 0},
                  sheet.that_fits({Letter::bold, {Letter::bold, true}, {Letter::second, true}, {Letter::small, true}},
                                  head, half, 1),
                  head, 1);
    const std::string how = how_it_lies(laid);
    sheet.wrapped({box.x + text_left, box.y + 8.4, half, 0},
                  sheet.that_fits({Letter::second, {Letter::second, true}, {Letter::small, true}}, how, half, 2), how,
                  2, colours().second);
    if (laid.joint_mm && laid.joint_greatest_mm && !sheet.is_narrow())
        sheet.figure(figures::range_line(static_cast<double>(*laid.joint_mm),
                                         static_cast<double>(laid.joint_least_mm.value_or(0)),
                                         static_cast<double>(*laid.joint_greatest_mm),
                                         say("{} mm, {} to {}", *laid.joint_mm, laid.joint_least_mm.value_or(0),
                                             *laid.joint_greatest_mm),
                                         w - half),
                     box.x + text_left + half, box.y + 4);
    sheet.line(box.x, box.y + box.h, box.x + box.w, box.y + box.h, thin_mm, colours().rule);
}

void LaidPage::list(Sheet& sheet, const Box& area)
{
    const double whole = static_cast<double>(laid_.size()) * line_height_mm;
    touch_scroll(scroll_, sheet, area, sheet.theme().px(whole - area.h));
    double y = area.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    sheet.clip(area);
    for (const desk::LaidPipe& each : laid_) {
        if (y + line_height_mm > area.y && y < area.y + area.h)
            draw_line(sheet, each, {area.x, y, area.w, line_height_mm});
        y += line_height_mm;
    }
    sheet.clip_no_more();
    if (laid_.empty())
        sheet.wrapped({text_left, area.y + 20, area.w - 2 * text_left, 0}, Letter::text,
                      "No pipe is in the log yet. Log the first one when its joint has been looked at.", 4);
}

bool LaidPage::draw(Sheet& sheet)
{
    if (record_) {
        if (!record_->draw(sheet))
            record_.reset();
        return true;
    }
    look();
    const std::vector<std::string> buttons = with_button({"Back", "Log a pipe"}, scroll_.button());
    list(sheet, begin_page(sheet, say("Laid pipes: {} in the log", laid_.size()), buttons));
    const std::string pressed = draw_foot(sheet, buttons);
    if (pressed == "Log a pipe")
        record_.emplace(outside_, "pipe_laid");
    scroll_.press(pressed);
    ui::draw(sheet, title_block(outside_, "SUPERVISOR", ""));
    return pressed != "Back";
}

} // namespace cotter::ui
