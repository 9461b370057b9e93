#include "document.hpp"

#include "local_time.hpp"

#include <cairo-pdf.h>

#include <algorithm>
#include <stdexcept>

namespace cotter::paper {

namespace {

// ISO 216 A4; the frame leaves a wider edge for filing. Source: ISO 5457, from memory.
constexpr double paper_width = 210, paper_height = 297, frame_left = 20, frame_edge = 10,
                 inner = text_left - frame_left;
constexpr double right = paper_width - frame_edge - inner;
constexpr double caution_height = 9, label_height = 4.6, cell_pad = 1.5;

struct Cell {
    std::string label, text;
    double share;
};

std::vector<std::vector<Cell>> cells_of(const TitleBlock& block, int page, int of)
{
    const std::string pages = std::to_string(page) + " of " + std::to_string(std::max(of, page));
    return {{{"TITLE", block.title, 0.44}, {"SITE", block.site, 0.34}, {"PAGE", pages, 0.22}},
            {{"DAY", block.day, 0.30},
             {"PRINTED BY", block.printed_by, 0.26},
             {"RECORD", block.record, 0.30},
             {"BOOK", block.sample ? "SAMPLE" : "own", 0.14}}};
}

constexpr double block_width = paper_width - frame_edge - frame_left;

double row_height(const Canvas& canvas, const std::vector<Cell>& row)
{
    double height = 0;
    for (const Cell& each : row)
        height =
            std::max(height, canvas.lines(Letter::text, each.text, each.share * block_width - 2 * cell_pad).height());
    return label_height + height + 2;
}

cairo_status_t keep(void* to, const unsigned char* bytes, unsigned int length)
{
    static_cast<std::string*>(to)->append(reinterpret_cast<const char*>(bytes), length);
    return CAIRO_STATUS_SUCCESS;
}

using Surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;
using Context = std::unique_ptr<cairo_t, decltype(&cairo_destroy)>;

Surface new_surface(const TitleBlock& block, std::string& bytes)
{
    Surface surface{cairo_pdf_surface_create_for_stream(keep, &bytes, pt(paper_width), pt(paper_height)),
                    cairo_surface_destroy};
    const std::string made = desk::to_string(block.made);
    const auto say = [&](cairo_pdf_metadata_t what, const std::string& text) {
        cairo_pdf_surface_set_metadata(surface.get(), what, text.c_str());
    };
    say(CAIRO_PDF_METADATA_TITLE, block.title);
    say(CAIRO_PDF_METADATA_CREATOR, "Cotter");
    say(CAIRO_PDF_METADATA_CREATE_DATE, made);
    say(CAIRO_PDF_METADATA_MOD_DATE, made);
    return surface;
}

} // namespace

Document::Document(cairo_t* cairo, const TitleBlock& block, int of)
    : cairo_{cairo}, canvas_{cairo}, block_{block}, of_{of}
{
    new_page();
}

double Document::block_height() const
{
    double height = caution_height;
    for (const auto& row : cells_of(block_, page_, of_))
        height += row_height(canvas_, row);
    return height;
}

double Document::draw_title_block()
{
    const double end = paper_width - frame_edge, top = paper_height - frame_edge - block_height();
    double y = top;
    canvas_.line(frame_left, y, end, y, thin_mm);
    canvas_.sign(figures::Sign::warning, frame_left + 5.5, y + caution_height / 2 + 0.2, 5.6);
    canvas_.lines(Letter::small, caution, block_width - 14).draw_all(frame_left + 11, y + 3.5);
    y += caution_height;
    for (const auto& row : cells_of(block_, page_, of_)) {
        const double height = row_height(canvas_, row);
        canvas_.line(frame_left, y, end, y, thin_mm);
        double x = frame_left;
        for (const Cell& each : row) {
            if (x > frame_left)
                canvas_.line(x, y, x, y + height, thin_mm);
            canvas_.colour(second);
            canvas_.lines(Letter::small, each.label, each.share * block_width).draw(0, x + cell_pad, y + 1.3);
            canvas_.colour(ink);
            canvas_.lines(Letter::text, each.text, each.share * block_width - 2 * cell_pad)
                .draw_all(x + cell_pad, y + label_height);
            x += each.share * block_width;
        }
        y += height;
    }
    return top;
}

void Document::new_page()
{
    if (page_ > 0)
        cairo_show_page(cairo_);
    ++page_;
    canvas_.colour(ink);
    canvas_.frame(frame_left, frame_edge, block_width, paper_height - 2 * frame_edge, thick_mm);
    bottom_ = draw_title_block() - 3;
    y_ = frame_edge + inner;
}

double Document::width() const { return right - text_left; }
double Document::room() const { return bottom_ - y_; }

void Document::need(double height)
{
    if (height > room())
        new_page();
}

void Document::title(const std::string& text, const std::string& under)
{
    const Lines set = canvas_.lines(Letter::title, text, width());
    set.draw_all(text_left, y_ + 1);
    y_ += set.height() + 5;
    paragraph(under);
    y_ += 1;
}

void Document::head(Letter letter, const std::string& text)
{
    const Lines set = canvas_.lines(letter, text, width());
    need(set.height() + 20);
    set.draw_all(text_left, y_);
    y_ += set.height() + 3;
}

void Document::heading(const std::string& text)
{
    y_ += 4;
    head(Letter::heading, text);
}

void Document::subheading(const std::string& text)
{
    y_ += 1.5;
    head(Letter::bold, text);
}

void Document::paragraph(const std::string& text, Letter letter)
{
    if (text.empty())
        return;
    const Lines set = canvas_.lines(letter, text, width());
    for (int i = 0; i < set.count(); ++i) {
        need(capital_mm(letter) + 1);
        set.draw(i, text_left, y_);
        y_ += set.step();
    }
    y_ += 1;
}

void Document::figure(const figures::Figure& figure)
{
    need(figure.height + 2);
    canvas_.figure(figure, text_left, y_);
    y_ += figure.height + 2;
}

std::string make_pdf(const TitleBlock& block, const std::function<void(Document&)>& draw)
{
    int of = 0;
    std::string bytes;
    for (int pass = 0; pass < 2; ++pass) {
        bytes.clear();
        const Surface surface = new_surface(block, bytes);
        const Context context{cairo_create(surface.get()), cairo_destroy};
        Document document{context.get(), block, of};
        draw(document);
        of = document.pages();
        cairo_show_page(context.get());
        cairo_surface_finish(surface.get());
        if (const auto status = cairo_surface_status(surface.get()); status != CAIRO_STATUS_SUCCESS)
            throw std::runtime_error{std::string{"the PDF cannot be drawn: "} + cairo_status_to_string(status)};
    }
    return bytes;
}

} // namespace cotter::paper
