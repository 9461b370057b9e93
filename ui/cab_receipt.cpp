// The Cab: the receipt at the day's end, to be kept outside the machine.

#include "cab.hpp"
#include "qr.hpp"

namespace cotter::ui {

namespace {

// The ends of a head are enough to compare by eye.
std::string short_head(const std::string& hash) { return hash.substr(0, 8) + " ... " + hash.substr(hash.size() - 8); }

} // namespace

void Cab::receipt(Sheet& sheet)
{
    const bool wide = sheet.width() > sheet.height();
    const double side = std::min(86.0, sheet.height() - title_height(sheet) - 12);
    const Choice choice{
        "Stood down. Photograph this with a phone.",
        say("{} records, the last is {}. The picture proves later that nothing was taken out of the book.",
            receipt_.head.seq, short_head(receipt_.head.hash)),
        {{"Photographed", "kept on a phone", figures::Sign::in_order}},
        false,
        "Not now",
        std::nullopt,
        wide ? side + 12 : 0};
    const auto pressed = ask(sheet, choice);
    draw_qr(sheet, to_text(receipt_),
            wide ? Box{sheet.width() - side - 6, 6, side, side}
                 : Box{6, sheet.height() - title_height(sheet) - side - 30, side, side});
    if (!pressed)
        return;
    if (*pressed == 0)
        write(give_a_receipt(outside_.hand(operator_), outside_.book, receipt_.head, "photographed on a phone"));
    if (outside_.day_is_over)
        outside_.day_is_over();
    go(Page::gone);
}

} // namespace cotter::ui
