#include "sheet.hpp"

#include <algorithm>
#include <cmath>

namespace cotter::ui {

namespace {

constexpr double slop_mm = 3;                                            // a gloved finger rolls
constexpr double button_radius_mm = 1;                                   // buttons are told from the drawing by it
constexpr double leading = 1.62, beside_words = 1.3, least_beside = 0.6; // over capital height; mm to a frame

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

Sheet::Sheet(const Theme& theme, Spy spy, bool hears_fingers, bool hears_them_on_pads)
    : theme_{theme}, spy_{std::move(spy)}, list_{ImGui::GetWindowDrawList()}, hears_fingers_{hears_fingers},
      hears_them_on_pads_{hears_them_on_pads}
{
}

double Sheet::width() const { return static_cast<double>(ImGui::GetIO().DisplaySize.x) / theme_.px_per_mm(); }
double Sheet::height() const { return static_cast<double>(ImGui::GetIO().DisplaySize.y) / theme_.px_per_mm(); }

bool Sheet::is_narrow() const { return width() < 170; }

void Sheet::fill(const Box& box, ImU32 colour)
{
    is_blank_ = false;
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

double Sheet::measure(Lettering letter, const std::string& text) const
{
    const ImFont* font = theme_.face(letter).font;
    return static_cast<double>(font->CalcTextSizeA(font->FontSize, 1e6F, 0, text.c_str()).x) / theme_.px_per_mm();
}

double Sheet::width_of(Lettering letter, const std::string& text) const
{
    return measure(letter, words::in_language(text));
}

double Sheet::put(double x, double y, Lettering letter, const std::string& text, ImU32 colour)
{
    const Face& face = theme_.face(letter);
    const ImVec2 at{std::round(theme_.px(x)), std::round(theme_.px(y) - face.capital_top)};
    list_->AddText(face.font, face.font->FontSize, at, colour, text.c_str());
    const double width = measure(letter, text);
    report(text, false, {x, y, width, capital_mm(letter)}, x + width > this->width() + 0.2 ? text : "", colour);
    return width;
}

double Sheet::text(double x, double y, Lettering letter, const std::string& text, ImU32 colour)
{
    return put(x, y, letter, words::in_language(text), colour);
}

std::vector<std::string> Sheet::broken(Lettering letter, const std::string& text, double width) const
{
    std::vector<std::string> lines{""};
    for (const std::string& word : words_of(text)) {
        const std::string longer = lines.back().empty() ? word : lines.back() + " " + word;
        if (!lines.back().empty() && measure(letter, longer) > width)
            lines.push_back(word);
        else
            lines.back() = longer;
    }
    return lines;
}

int Sheet::lines_of(Lettering letter, const std::string& text, double width) const
{
    return static_cast<int>(broken(letter, words::in_language(text), width).size());
}

double Sheet::height_of(Lettering letter, const std::string& text, double width) const
{
    return text.empty() ? 0 : capital_mm(letter) * leading * lines_of(letter, text, width);
}

bool Sheet::fits(Lettering letter, const std::string& text, double width, int most) const
{
    const auto lines = broken(letter, text, width);
    return static_cast<int>(lines.size()) <= most &&
           std::all_of(lines.begin(), lines.end(),
                       [&](const std::string& line) { return measure(letter, line) <= width + 0.5; });
}

Lettering Sheet::that_fits(const std::vector<Lettering>& by_size, const std::string& english, double width,
                           int lines) const
{
    const std::string text = words::in_language(english);
    const auto found = std::find_if(by_size.begin(), by_size.end(),
                                    [&](const Lettering& each) { return fits(each, text, width, lines); });
    return found == by_size.end() ? by_size.back() : *found;
}

std::string Sheet::cut(Lettering letter, std::string text, double width, int lines) const
{
    text = words::in_language(text);
    const Lettering plain{letter.letter, true};
    if (fits(letter, text, width, lines) || fits(plain, text, width, lines))
        return text;
    while (!text.empty() && !fits(plain, text + " ...", width, lines)) {
        const auto space = text.find_last_of(' ');
        std::size_t at = space == std::string::npos ? text.size() / 2 : space;
        while (at > 0 && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U) // whole letters
            --at;
        text.erase(at);
    }
    return text + " ...";
}

double Sheet::wrapped(const Box& box, Lettering letter, const std::string& english, int most, ImU32 colour)
{
    const std::string text = words::in_language(english);
    letter.plain = letter.plain || !fits(letter, text, box.w, most);
    const double step = capital_mm(letter) * leading;
    std::string clipped;
    int used = 0;
    for (const std::string& line : broken(letter, text, box.w)) {
        if (used == most || measure(letter, line) > box.w + 0.5)
            clipped += line + " ";
        if (used < most)
            put(box.x, box.y + step * used++, letter, line, colour);
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

void Sheet::report(const std::string& text, bool target, const Box& box, const std::string& clipped, ImU32 ink,
                   bool has_keyboard)
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
    spy_({text, target, from.x, from.y, to.x - from.x, to.y - from.y, clipped, ink, ink == 0 ? 0 : ground_under(box),
          has_keyboard});
}

bool Sheet::target(const std::string& words, const Box& box, bool chosen)
{
    fill(box, colours().sheet);
    frame(box, chosen ? 2 * thick_mm : thick_mm, colours().ink, button_radius_mm);
    ImGui::SetCursorScreenPos(px(box.x, box.y));
    ImGui::PushID(static_cast<int>(theme_.px(box.x)));
    ImGui::PushID(static_cast<int>(theme_.px(box.y)));
    const bool pressed = ImGui::InvisibleButton(words.empty() ? "target" : words.c_str(), px(box.w, box.h));
    ImGui::PopID();
    ImGui::PopID();
    const bool has_keyboard = ImGui::IsItemFocused() && ImGui::GetIO().NavVisible;
    report(words, true, box, "", 0, has_keyboard);
    const bool by_enter = has_keyboard && is_key_pressed(ImGuiKey_Enter) && !ImGui::GetIO().WantTextInput;
    if (has_keyboard) // where the keyboard stands
        frame({box.x - 0.9, box.y - 0.9, box.w + 1.8, box.h + 1.8}, thick_mm, colours().ink, button_radius_mm + 0.9);
    const bool is_heard = hears_fingers_ || (takes_digits_ && hears_them_on_pads_) || !ImGui::IsMouseReleased(0);
    const bool taken = by_enter || (pressed && is_heard && !press_became_drag(theme_));
    was_pressed_ = was_pressed_ || taken;
    return taken;
}

// As large as the box has room for.
Lettering Sheet::for_button(const std::string& text, const Box& box, bool with_sign, double beside) const
{
    const double room = box.w - 2 * beside, high = with_sign ? box.h * 0.5 - 1 : box.h - 1.4;
    for (const Lettering each : {Lettering{Letter::bold}, Lettering{Letter::second}, Lettering{Letter::bold, true},
                                 Lettering{Letter::second, true}}) {
        const double room_high = each.letter == Letter::bold ? high - 2 : high; // bold lines want air
        const int most = static_cast<int>((room_high - capital_mm(each)) / (capital_mm(each) * leading)) + 1;
        if (fits(each, text, room, std::max(1, most)))
            return each;
    }
    return {Letter::small, true};
}

Lettering Sheet::common_letter(const std::vector<std::string>& all, double width, double height, bool with_sign) const
{
    Lettering smallest{Letter::bold};
    for (const std::string& each : all) {
        const Lettering own = for_button(words::in_language(each), {0, 0, width, height}, with_sign, least_beside);
        const auto rank = [](Lettering of) { return std::pair{capital_mm(of), of.letter == Letter::bold}; };
        if (rank(own) < rank(smallest))
            smallest = own;
    }
    return smallest;
}

bool Sheet::button(const std::string& words, const Box& box, std::optional<figures::Sign> sign, bool chosen,
                   std::optional<Lettering> given)
{
    const bool pressed = target(words, box, chosen);
    const std::string said = words::in_language(words);
    const Lettering letter = given ? *given : for_button(said, box, sign.has_value(), beside_words);
    const double airy = box.w - 2 * beside_words, tight = box.w - 2 * least_beside;
    const double room = fits(letter, said, airy, lines_of(letter, words, tight)) ? airy : tight;
    const double step = capital_mm(letter) * leading;
    if (sign)
        this->sign(*sign, box.x + box.w / 2, box.y + box.h * 0.3, 4.6);
    const auto lines = broken(letter, said, room);
    const double height = step * static_cast<double>(lines.size() - 1) + capital_mm(letter);
    double y = sign ? box.y + box.h * 0.5 + (box.h * 0.5 - height) / 2 - 0.8 : box.y + (box.h - height) / 2;
    for (const std::string& line : lines) {
        const double wide = measure(letter, line);
        if (wide > room + 0.5)
            report(said, false, box, line);
        put(box.x + (box.w - wide) / 2, y, letter, line, colours().ink);
        y += step;
    }
    return pressed;
}

// The line along its foot grows while it is held.
bool Sheet::hold(const std::string& words, const Box& box, std::optional<figures::Sign> sign)
{
    button(words, box, sign);
    const ImGuiIO& io = ImGui::GetIO();
    const bool by_key =
        ImGui::IsItemFocused() && io.NavVisible && (is_key_down(ImGuiKey_Space) || is_key_down(ImGuiKey_Enter));
    const bool by_finger = ImGui::IsItemActive() && ImGui::IsMouseDown(0) && !press_became_drag(theme_);
    float& held = *ImGui::GetStateStorage()->GetFloatRef(ImGui::GetID((words + "held").c_str()), 0);
    if (!by_key && !by_finger) {
        held = 0;
        return false;
    }
    const float before = held;
    held += std::min(io.DeltaTime, 0.1F);
    fill({box.x + 1, box.y + box.h - 1.6, (box.w - 2) * std::min(1.0F, held / hold_s), 1.1}, colours().ink);
    return before < hold_s && held >= hold_s;
}

} // namespace cotter::ui
