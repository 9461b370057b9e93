#include "compare.hpp"

#include "foot.hpp"
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
                                      (each.pages.empty() ? ", " + say("no picture") : ""),
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
    pane_.clear();
    if (const auto bytes = name.empty() || !outside_.page ? std::nullopt : outside_.page(name))
        pane_.show(outside_, *bytes);
}

void Compare::page(Sheet& sheet, const Box& box)
{
    pane_.draw(sheet, box);
    if (!pane_.has_picture())
        sheet.wrapped({box.x + 4, box.y + 6, box.w - 8, 0}, Letter::text,
                      typed_.pages.empty()
                          ? "No picture of its page is in the book. Compare with the page itself: plate, manual, "
                            "delivery note or report."
                          : "The picture is not on this device, or cannot be read. Compare with the page itself.",
                      6);
}

double Compare::height_of(const Sheet& sheet, const std::string& value, double width)
{
    return 7 + 5.7 * sheet.lines_of(Letter::bold, value, width);
}

void Compare::lines(Sheet& sheet, const Box& box)
{
    constexpr int most = 40; // signed as a whole, so shown as a whole
    const double w = box.w - 6;
    double whole = 0;
    for (const auto& [unused, value] : typed_.lines)
        whole += height_of(sheet, value, w);
    sheet.fill(box, colours().sheet);
    touch_scroll(scroll_, sheet, box, sheet.theme().px(whole - box.h));
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

// The two answers stand apart, at the ends of their own row.
void Compare::buttons(Sheet& sheet, double y)
{
    const Hand& hand = at_desk();
    const double edge = 3, w = (sheet.width() - 2 * edge - hand.opposite_gap) / 2;
    if (sheet.button("Not alike", {edge, y, w, hand.target}))
        go(Page::not_alike);
    if (sheet.button("All alike", {edge + w + hand.opposite_gap, y, w, hand.target}))
        proved();
}

std::vector<std::string> Compare::foot() const
{
    std::vector<std::string> all{"Back"};
    if (pane_.has_picture())
        all.emplace_back(pane_.is_largest() ? "Whole page" : "Larger");
    if (typed_.pages.size() > 1)
        all.emplace_back("Next page");
    if (pane_.has_picture() && pane_.is_larger())
        all.emplace_back("Next part");
    return with_button(all, scroll_.button());
}

void Compare::press(const std::string& word)
{
    if (word == "Back")
        go(Page::list);
    if (word == "Larger" || word == "Whole page")
        pane_.larger();
    if (word == "Next part")
        pane_.further();
    scroll_.press(word);
    if (word == "Next page") {
        shown_ = (shown_ + 1) % typed_.pages.size();
        open(typed_.pages[shown_]);
    }
}

void Compare::proved()
{
    desk::write(outside_.book, {desk::compare(outside_.hand(second_), typed_.what, typed_.id)});
    go(Page::list);
}

// Page and typed values side by side; on narrow glass the page above.
void Compare::beside(Sheet& sheet)
{
    const std::vector<std::string> words = foot();
    const Box area = begin_page(sheet, typed_.name, words);
    const double answers = at_desk().target + 2 * std::max(3.0, at_desk().gap), h = area.h - answers;
    const bool wide = !sheet.is_narrow();
    const Box left{area.x, area.y, wide ? area.w * 0.55 : area.w, wide ? h : h * 0.5};
    lines(sheet, wide ? Box{left.w, area.y, area.w - left.w, h} : Box{0, area.y + left.h, area.w, h - left.h});
    page(sheet, left);
    sheet.fill({area.x, area.y + h, area.w, answers}, colours().ground);
    sheet.line(area.x, area.y + h, area.x + area.w, area.y + h, thin_mm);
    buttons(sheet, area.y + h + std::max(3.0, at_desk().gap));
    press(draw_foot(sheet, words));
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
