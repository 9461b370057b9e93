#include "compare.hpp"

#include "title_block.hpp"
#include "written.hpp"

#include <algorithm>

namespace cotter::ui {

namespace {

std::string what_it_is(const desk::Typed& typed) { return typed.what == "report" ? "examination report" : typed.what; }

} // namespace

void Compare::go(Page page)
{
    page_ = page;
    turned_ = 0;
    scroll_ = {};
}

std::optional<std::size_t> Compare::ask(Sheet& sheet, const Choice& choice)
{
    const auto pressed = ui::draw(sheet, choice, turned_);
    ui::draw(sheet, title_block(outside_, "COMPARES", second_));
    return pressed;
}

void Compare::list(Sheet& sheet)
{
    if (const std::string of = outside_.book.state().head.hash; of != all_of_) {
        all_ = desk::to_compare(outside_.book);
        all_of_ = of;
    }
    Choice choice{"What was typed, and not compared yet", "", {}, false, "Back"};
    for (const desk::Typed& each : all_)
        choice.options.push_back({each.name,
                                  say("{}, typed by {}", what_it_is(each), desk::shown_name(outside_.book, each.by)) +
                                      (each.pages.empty() ? ", no picture" : ""),
                                  std::nullopt});
    if (all_.empty())
        choice.hint = "Everything that decides lifts was compared with its page by a second person.";
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == all_.size())
        return go(Page::gone);
    typed_ = all_[*pressed];
    go(Page::who);
}

// Whoever typed it does not compare it.
void Compare::who(Sheet& sheet)
{
    Choice choice{"Who compares it?",
                  say("Another than {}, who typed it.", desk::shown_name(outside_.book, typed_.by)),
                  {},
                  false,
                  "Back"};
    std::vector<std::string> able;
    for (const auto& fact : outside_.book.facts("person"))
        if (fact.key.key != typed_.by) {
            able.push_back(fact.key.key);
            choice.options.push_back(
                {desk::shown_name(outside_.book, fact.key.key), fact.doc.value("firm", ""), std::nullopt});
        }
    const auto pressed = ask(sheet, choice);
    if (!pressed)
        return;
    if (*pressed == able.size())
        return go(Page::list);
    outside_.signing.once(able[*pressed], [this, person = able[*pressed]] {
        second_ = person;
        shown_ = typed_.pages.empty() ? 0 : typed_.pages.size() - 1;
        open(typed_.pages.empty() ? "" : typed_.pages[shown_]);
        go(Page::beside);
    });
}

void Compare::open(const std::string& name)
{
    picture_.reset();
    texture_ = nullptr;
    zoom_ = 1;
    moved_ = {0, 0};
    const auto bytes = name.empty() || !outside_.page ? std::nullopt : outside_.page(name);
    if (bytes)
        picture_ = decode(*bytes);
    if (picture_ && outside_.texture)
        texture_ = outside_.texture(*picture_);
}

// The whole page, or larger and moved by the finger.
void Compare::page(Sheet& sheet, const Box& box)
{
    sheet.fill(box, colours().sheet);
    sheet.frame(box, thin_mm);
    if (!picture_) {
        sheet.wrapped({box.x + 4, box.y + 6, box.w - 8, 0}, Letter::text,
                      typed_.pages.empty()
                          ? "No picture of its page is in the book. Compare with the page itself: plate, manual, "
                            "delivery note or report."
                          : "The picture is not on this device, or cannot be read. Compare with the page itself.",
                      6);
        return;
    }
    const float w = sheet.theme().px(box.w), h = sheet.theme().px(box.h);
    const float fit = std::min(w / static_cast<float>(picture_->width), h / static_cast<float>(picture_->height));
    const float scale = fit * static_cast<float>(zoom_);
    const ImVec2 size{static_cast<float>(picture_->width) * scale, static_cast<float>(picture_->height) * scale};
    const ImVec2 at{sheet.theme().px(box.x), sheet.theme().px(box.y)};
    if (ImGui::IsMouseDown(0) && ImGui::IsMouseHoveringRect(at, {at.x + w, at.y + h})) {
        const ImVec2 by = ImGui::GetIO().MouseDelta;
        moved_ = {std::clamp(moved_.x + by.x, std::min(0.0F, w - size.x), 0.0F),
                  std::clamp(moved_.y + by.y, std::min(0.0F, h - size.y), 0.0F)};
    }
    const ImVec2 in_the_middle{std::max(0.0F, (w - size.x) / 2), std::max(0.0F, (h - size.y) / 2)};
    sheet.picture(texture_, box, {moved_.x + in_the_middle.x, moved_.y + in_the_middle.y}, size);
}

double Compare::height_of(const Sheet& sheet, const std::string& value, double width)
{
    return 7 + 5.7 * sheet.lines_of(Letter::bold, value, width);
}

void Compare::lines(Sheet& sheet, const Box& box)
{
    constexpr int most = 4;
    const double w = box.w - 6;
    double whole = 0;
    for (const auto& [unused, value] : typed_.lines)
        whole += height_of(sheet, value, w);
    sheet.fill(box, colours().sheet);
    touch_scroll(scroll_, sheet.theme(), box, sheet.theme().px(whole - box.h));
    double y = box.y - static_cast<double>(scroll_.at) / sheet.theme().px_per_mm();
    sheet.clip(box);
    for (const auto& [said, value] : typed_.lines) {
        const double h = height_of(sheet, value, w);
        if (y > box.y - h && y < box.y + box.h) {
            sheet.wrapped({box.x + 3, y + 1.4, w, 0}, Letter::second, said, 1, colours().second);
            sheet.wrapped({box.x + 3, y + 5.8, w, 0}, Letter::bold, value, most);
            sheet.line(box.x, y + h, box.x + box.w, y + h, thin_mm, colours().rule);
        }
        y += h;
    }
    sheet.clip_no_more();
}

void Compare::buttons(Sheet& sheet, double y)
{
    const double gap = 3, w = (sheet.width() - 6 * gap) / 5, h = at_desk().target + 2;
    double x = gap;
    const auto button = [&](const char* words, std::optional<figures::Sign> sign = std::nullopt) {
        const bool pressed = sheet.button(words, {x, y, w, h}, sign);
        x += w + gap;
        return pressed;
    };
    const bool leaves = button("Back"), larger = picture_ && button(zoom_ < 4 ? "Larger" : "Whole page");
    const bool next = typed_.pages.size() > 1 && button("Next page");
    x = sheet.width() - 2 * (w + gap);
    const bool no = button("Not alike"), yes = button("All alike");
    if (larger) {
        zoom_ = zoom_ < 4 ? zoom_ * 2 : 1;
        moved_ = {0, 0};
    }
    if (next) {
        shown_ = (shown_ + 1) % typed_.pages.size();
        open(typed_.pages[shown_]);
    }
    if (leaves)
        go(Page::list);
    if (no)
        go(Page::not_alike);
    if (yes)
        proved();
}

void Compare::proved()
{
    desk::write(outside_.book, {desk::compare(outside_.hand(second_), typed_.what, typed_.id)});
    go(Page::list);
}

// Page and typed values side by side; on narrow glass the page above.
void Compare::beside(Sheet& sheet)
{
    sheet.fill({0, 0, sheet.width(), sheet.height()}, colours().ground);
    const double bottom = sheet.height() - title_height(sheet) - at_desk().target - 4, h = bottom - head_mm;
    const bool wide = !sheet.is_narrow();
    const Box left{0, head_mm, wide ? sheet.width() * 0.55 : sheet.width(), wide ? h : h * 0.5};
    page(sheet, left);
    lines(sheet,
          wide ? Box{left.w, head_mm, sheet.width() - left.w, h} : Box{0, head_mm + left.h, sheet.width(), h - left.h});
    sheet.fill({0, 0, sheet.width(), head_mm}, colours().ground);
    sheet.wrapped({4, 3.8, sheet.width() - 8, 0}, Letter::heading, typed_.name, 1);
    sheet.fill({0, bottom, sheet.width(), at_desk().target + 4}, colours().ground);
    buttons(sheet, bottom + 1);
    ui::draw(sheet, title_block(outside_, "COMPARES", second_));
}

void Compare::not_alike(Sheet& sheet)
{
    if (ask(sheet, {"It stays unproved, and no lift rests on it",
                    say("Tell who typed it: {}. The correction is a record of its own; then it is compared again.",
                        desk::shown_name(outside_.book, typed_.by)),
                    {{"Understood", "", std::nullopt}},
                    false,
                    ""}))
        go(Page::list);
}

bool Compare::draw(Sheet& sheet)
{
    switch (page_) {
    case Page::list: list(sheet); break;
    case Page::who: who(sheet); break;
    case Page::beside: beside(sheet); break;
    case Page::not_alike: not_alike(sheet); break;
    case Page::gone: break;
    }
    return page_ != Page::gone;
}

} // namespace cotter::ui
