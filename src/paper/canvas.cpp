// Lines and lettering on the page. A PDF's unit is the point; everything outside this file is in millimetres.

#include "canvas.hpp"

#include <pango/pangocairo.h>

#include <array>
#include <stdexcept>

namespace cotter::paper {

namespace {

constexpr double leading = 1.72; // from line to line, in capital heights

struct Face {
    const char* description; // the fonts behind the first have signs that it lacks
    const char* family;
};

constexpr Face regular{"Noto Sans,Noto Sans Math,Noto Sans Symbols2", "Noto Sans"};
constexpr Face bold{"Noto Sans,Noto Sans Math,Noto Sans Symbols2 Bold", "Noto Sans"};
constexpr Face lettering{"osifont,Noto Sans", "osifont"};

const Face& face_of(Letter letter)
{
    switch (letter) {
    case Letter::title:
    case Letter::heading:
    case Letter::bold: return bold;
    case Letter::text:
    case Letter::small: return regular;
    case Letter::drawing: return lettering;
    }
    return regular;
}

struct Unref {
    void operator()(void* object) const { g_object_unref(object); }
};
struct FreeDescription {
    void operator()(PangoFontDescription* it) const { pango_font_description_free(it); }
};
using Description = std::unique_ptr<PangoFontDescription, FreeDescription>;

// Unhinted, so that a line is as long wherever it is set.
PangoLayout* new_layout(cairo_t* cairo)
{
    PangoLayout* layout = pango_cairo_create_layout(cairo);
    PangoContext* context = pango_layout_get_context(layout);
    const std::unique_ptr<cairo_font_options_t, decltype(&cairo_font_options_destroy)> options{
        cairo_font_options_create(), cairo_font_options_destroy};
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context, options.get());
    pango_context_set_round_glyph_positions(context, FALSE);
    const std::unique_ptr<PangoAttrList, decltype(&pango_attr_list_unref)> whole{pango_attr_list_new(),
                                                                                 pango_attr_list_unref};
    pango_attr_list_insert(whole.get(), pango_attr_insert_hyphens_new(FALSE)); // a broken hash stays a hash
    pango_layout_set_attributes(layout, whole.get());
    return layout;
}

Description described(const Face& face, double size_pt)
{
    Description description{pango_font_description_from_string(face.description)};
    pango_font_description_set_absolute_size(description.get(), size_pt * PANGO_SCALE);
    return description;
}

void check_is_here(PangoLayout* layout, const Face& face)
{
    const Description wanted = described(face, 10);
    const std::unique_ptr<PangoFont, Unref> font{
        pango_context_load_font(pango_layout_get_context(layout), wanted.get())};
    const Description found{font ? pango_font_describe(font.get()) : pango_font_description_new()};
    const char* family = pango_font_description_get_family(found.get());
    if (!family || std::string{family} != face.family)
        throw std::runtime_error{std::string{face.family} +
                                 ": this font is missing; Debian's fonts-noto-core and fonts-osifont have it"};
}

// The part of the font's size that a capital takes.
double capital_share(cairo_t* cairo, const Face& face)
{
    constexpr double size = 100;
    const std::unique_ptr<PangoLayout, Unref> layout{new_layout(cairo)};
    check_is_here(layout.get(), face);
    pango_layout_set_font_description(layout.get(), described(face, size).get());
    pango_layout_set_text(layout.get(), "H", 1);
    PangoRectangle drawn{};
    pango_layout_get_extents(layout.get(), &drawn, nullptr);
    return static_cast<double>(drawn.height) / PANGO_SCALE / size;
}

double size_pt(cairo_t* cairo, Letter letter)
{
    static const std::array<double, 2> shares{capital_share(cairo, regular), capital_share(cairo, lettering)};
    return pt(capital_mm(letter)) / shares[letter == Letter::drawing ? 1 : 0];
}

} // namespace

double pt(double mm) { return mm * 72 / 25.4; }

double capital_mm(Letter letter)
{
    switch (letter) {
    case Letter::title: return 5;
    case Letter::heading: return 3.2;
    case Letter::bold:
    case Letter::text: return 2.3;
    case Letter::small: return 2.0;
    case Letter::drawing: return 2.5;
    }
    return 2.3;
}

void Lines::Free::operator()(PangoLayout* layout) const { g_object_unref(layout); }

Lines::Lines(cairo_t* cairo, Letter letter, const std::string& text, double width_mm)
    : cairo_{cairo}, letter_{letter}, layout_{new_layout(cairo)}
{
    pango_layout_set_font_description(layout_.get(), described(face_of(letter), size_pt(cairo, letter)).get());
    pango_layout_set_width(layout_.get(), static_cast<int>(pt(width_mm) * PANGO_SCALE));
    pango_layout_set_wrap(layout_.get(), PANGO_WRAP_WORD_CHAR);
    pango_layout_set_text(layout_.get(), text.data(), static_cast<int>(text.size()));
}

int Lines::count() const { return pango_layout_get_line_count(layout_.get()); }

double Lines::step() const { return capital_mm(letter_) * leading; }

double Lines::width() const
{
    PangoRectangle taken{};
    pango_layout_get_extents(layout_.get(), nullptr, &taken);
    return static_cast<double>(taken.width) / PANGO_SCALE * 25.4 / 72;
}

void Lines::draw(int line, double x, double y) const
{
    cairo_move_to(cairo_, pt(x), pt(y + capital_mm(letter_)));
    pango_cairo_show_layout_line(cairo_, pango_layout_get_line_readonly(layout_.get(), line));
}

void Lines::draw_all(double x, double y) const
{
    for (int i = 0; i < count(); ++i)
        draw(i, x, y + step() * i);
}

double Canvas::width_of(Letter letter, const std::string& text) const { return lines(letter, text, 10'000).width(); }

void Canvas::colour(const Colour& c) const { cairo_set_source_rgb(cairo_, c.red, c.green, c.blue); }

void Canvas::line(double x1, double y1, double x2, double y2, double thickness) const
{
    cairo_set_line_width(cairo_, pt(thickness));
    cairo_move_to(cairo_, pt(x1), pt(y1));
    cairo_line_to(cairo_, pt(x2), pt(y2));
    cairo_stroke(cairo_);
}

void Canvas::frame(double x, double y, double w, double h, double thickness) const
{
    cairo_set_line_width(cairo_, pt(thickness));
    cairo_rectangle(cairo_, pt(x), pt(y), pt(w), pt(h));
    cairo_stroke(cairo_);
}

void Canvas::fill(double x, double y, double w, double h) const
{
    cairo_rectangle(cairo_, pt(x), pt(y), pt(w), pt(h));
    cairo_fill(cairo_);
}

} // namespace cotter::paper
