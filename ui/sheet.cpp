#include "sheet.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::ui {

namespace {

constexpr double slop_mm = 3;          // a gloved finger rolls
constexpr double button_radius_mm = 1; // buttons are told from the drawing by it
constexpr double leading = 1.62;       // line distance over capital height

std::vector<std::string> words_of(const std::string& text)
{
    std::vector<std::string> words;
    std::string word;
    for (const char c : text + " ")
        if (c == ' ') {
            if (!word.empty())
                words.push_back(word);
            word.clear();
        } else
            word += c;
    return words;
}

} // namespace

bool press_became_drag(const Theme& theme)
{
    const ImGuiIO& io = ImGui::GetIO();
    const bool in_play = ImGui::IsMouseDown(0) || ImGui::IsMouseReleased(0);
    const float slop = theme.px(slop_mm);
    return in_play && io.MouseDragMaxDistanceSqr[0] > slop * slop;
}

Sheet::Sheet(const Theme& theme, Spy spy) : theme_{theme}, spy_{std::move(spy)}, list_{ImGui::GetWindowDrawList()} {}

double Sheet::width() const { return static_cast<double>(ImGui::GetIO().DisplaySize.x) / theme_.px_per_mm(); }
double Sheet::height() const { return static_cast<double>(ImGui::GetIO().DisplaySize.y) / theme_.px_per_mm(); }

bool Sheet::is_narrow() const { return width() < 170; }

void Sheet::fill(const Box& box, ImU32 colour)
{
    list_->AddRectFilled(px(box.x, box.y), px(box.x + box.w, box.y + box.h), colour);
    if (spy_)
        filled_.emplace_back(box, colour);
}

void Sheet::frame(const Box& box, double line_mm, ImU32 colour, double radius_mm)
{
    list_->AddRect(px(box.x, box.y), px(box.x + box.w, box.y + box.h), colour, theme_.px(radius_mm), 0,
                   theme_.px(line_mm));
}

void Sheet::line(double x1, double y1, double x2, double y2, double line_mm, ImU32 colour)
{
    list_->AddLine(px(x1, y1), px(x2, y2), colour, theme_.px(line_mm));
}

void Sheet::clip(const Box& box) { list_->PushClipRect(px(box.x, box.y), px(box.x + box.w, box.y + box.h), true); }

void Sheet::clip_no_more() { list_->PopClipRect(); }

void Sheet::picture(ImTextureID texture, const Box& box, ImVec2 moved_px, ImVec2 size_px)
{
    const ImVec2 from{px(box.x, box.y).x + moved_px.x, px(box.x, box.y).y + moved_px.y};
    report("picture", false, box, "");
    if (!texture)
        return;
    clip(box);
    list_->AddImage(texture, from, {from.x + size_px.x, from.y + size_px.y});
    clip_no_more();
}

double Sheet::width_of(Letter letter, const std::string& text) const
{
    const ImFont* font = theme_.face(letter).font;
    return static_cast<double>(font->CalcTextSizeA(font->FontSize, 1e6F, 0, text.c_str()).x) / theme_.px_per_mm();
}

double Sheet::text(double x, double y, Letter letter, const std::string& text, ImU32 colour)
{
    const Face& face = theme_.face(letter);
    const ImVec2 at{std::round(theme_.px(x)), std::round(theme_.px(y) - face.capital_top)};
    list_->AddText(face.font, face.font->FontSize, at, colour, text.c_str());
    const double width = width_of(letter, text);
    report(text, false, {x, y, width, capital_mm(letter)}, x + width > this->width() + 0.2 ? text : "", colour);
    return width;
}

std::vector<std::string> Sheet::broken(Letter letter, const std::string& text, double width) const
{
    std::vector<std::string> lines{""};
    for (const std::string& word : words_of(text)) {
        const std::string longer = lines.back().empty() ? word : lines.back() + " " + word;
        if (!lines.back().empty() && width_of(letter, longer) > width)
            lines.push_back(word);
        else
            lines.back() = longer;
    }
    return lines;
}

int Sheet::lines_of(Letter letter, const std::string& text, double width) const
{
    return static_cast<int>(broken(letter, text, width).size());
}

std::string Sheet::cut(Letter letter, std::string text, double width, int lines) const
{
    if (lines_of(letter, text, width) <= lines)
        return text;
    while (!text.empty() && lines_of(letter, text + " ...", width) > lines) {
        const auto space = text.find_last_of(' ');
        text.erase(space == std::string::npos ? text.size() / 2 : space);
    }
    return text + " ...";
}

double Sheet::wrapped(const Box& box, Letter letter, const std::string& text, int most, ImU32 colour)
{
    const double step = capital_mm(letter) * leading;
    const auto lines = broken(letter, text, box.w);
    std::string clipped;
    int used = 0;
    for (const std::string& line : lines) {
        if (used == most || width_of(letter, line) > box.w + 0.5)
            clipped += line + " ";
        if (used < most)
            this->text(box.x, box.y + step * used++, letter, line, colour);
    }
    if (!clipped.empty())
        report(text, false, box, clipped);
    return text.empty() ? 0 : step * used;
}

// The last that was filled there; the whole glass is filled first.
ImU32 Sheet::ground_under(const Box& box) const
{
    const double x = box.x + box.w / 2, y = box.y + box.h / 2;
    for (auto each = filled_.rbegin(); each != filled_.rend(); ++each)
        if (const Box& b = each->first; b.x <= x && x <= b.x + b.w && b.y <= y && y <= b.y + b.h)
            return each->second;
    return 0;
}

void Sheet::report(const std::string& text, bool target, const Box& box, const std::string& clipped, ImU32 ink)
{
    if (!spy_)
        return;
    ImVec2 from = px(box.x, box.y), to = px(box.x + box.w, box.y + box.h);
    const ImVec2 least = list_->GetClipRectMin(), most = list_->GetClipRectMax();
    if (to.x < least.x || to.y < least.y || from.x > most.x || from.y > most.y)
        return; // scrolled out of sight
    if (!target) {
        from.y = std::max(from.y, least.y);
        to.y = std::min(to.y, most.y);
    }
    spy_({text, target, from.x, from.y, to.x - from.x, to.y - from.y, clipped, ink, ink == 0 ? 0 : ground_under(box)});
}

bool Sheet::target(const std::string& words, const Box& box, bool chosen)
{
    fill(box, colours().sheet);
    frame(box, chosen ? 2 * thick_mm : thick_mm, colours().ink, button_radius_mm);
    report(words, true, box, "");
    ImGui::SetCursorScreenPos(px(box.x, box.y));
    ImGui::PushID(static_cast<int>(theme_.px(box.x)));
    ImGui::PushID(static_cast<int>(theme_.px(box.y)));
    const bool pressed = ImGui::InvisibleButton(words.empty() ? "target" : words.c_str(), px(box.w, box.h));
    ImGui::PopID();
    ImGui::PopID();
    if (ImGui::IsItemFocused() && ImGui::GetIO().NavVisible) // where the keyboard stands
        frame({box.x - 0.9, box.y - 0.9, box.w + 1.8, box.h + 1.8}, thick_mm, colours().ink, button_radius_mm + 0.9);
    return pressed && !press_became_drag(theme_);
}

bool Sheet::button(const std::string& words, const Box& box, std::optional<figures::Sign> sign, bool chosen)
{
    const bool pressed = target(words, box, chosen);
    const double room = box.w - 1.2;
    const Letter letter = width_of(Letter::bold, words) <= room ? Letter::bold : Letter::second;
    const double step = capital_mm(letter) * leading;
    if (sign)
        this->sign(*sign, box.x + box.w / 2, box.y + box.h * 0.3, 4.6);
    const auto lines = broken(letter, words, room);
    const double height = step * static_cast<double>(lines.size() - 1) + capital_mm(letter);
    double y = sign ? box.y + box.h * 0.5 + (box.h * 0.5 - height) / 2 - 0.8 : box.y + (box.h - height) / 2;
    for (const std::string& line : lines) {
        text(box.x + (box.w - width_of(letter, line)) / 2, y, letter, line);
        y += step;
    }
    return pressed;
}

} // namespace cotter::ui
