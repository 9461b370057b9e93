#pragma once

// A printed document: A4 upright, frame, title block and caution on every page; what is put in flows from page to page.

#include "canvas.hpp"
#include "quantity.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cotter::paper {

inline constexpr const char* caution = "Cotter supports, and never replaces, the lift plan, the maker's instructions, "
                                       "local law and competent people.";

inline constexpr double text_left = 24; // mm from the paper's edge

// The cells along the bottom in the manner of ISO 7200.
struct TitleBlock {
    std::string title, site, day, printed_by, record;
    bool sample = false;
    rules::Instant made{0}; // stands in the file as its date, so the same input gives the same bytes
};

struct Column {
    std::string heading;
    double share = 1; // of the width, beside the others' shares
};

struct Row {
    std::vector<std::string> cells;
    std::optional<figures::Sign> sign = std::nullopt;     // in front of the first cell
    std::optional<figures::Figure> figure = std::nullopt; // under the last cell's text
};

struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
};

class Document {
public:
    void title(const std::string& text, const std::string& under);
    void heading(const std::string& text); // kept with what follows
    void subheading(const std::string& text);
    void paragraph(const std::string& text, Letter letter = Letter::text);
    void table(const Table& table); // over as many pages as it takes, its headings on each; "None." if it is empty
    void figure(const figures::Figure& figure);
    void qr(const std::string& text, double side); // ISO/IEC 18004, error level H

    double width() const;
    double room() const; // mm to the end of this page
    int pages() const { return page_; }

private:
    friend std::string make_pdf(const TitleBlock& block, const std::function<void(Document&)>& draw);
    Document(Cairo* cairo, const TitleBlock& block, int of);
    void new_page();
    void head(Letter letter, const std::string& text);
    void need(double height); // a new page if there is no room for it
    double draw_title_block();
    double block_height() const;
    void table_headings(const Table& table);
    void row(const Table& table, const Row& row);
    std::vector<Lines> set(const Table& table, const Row& row) const;
    std::vector<double> lefts(const Table& table) const; // where the columns begin, and the end of the last

    Cairo* cairo_;
    Canvas canvas_;
    const TitleBlock& block_;
    int page_ = 0, of_;
    double y_ = 0, bottom_ = 0;
};

// The bytes of the PDF. `draw` is called twice, since each page says of how many it is.
std::string make_pdf(const TitleBlock& block, const std::function<void(Document&)>& draw);

} // namespace cotter::paper
