// Row book: is the record itself sound?
// Source: firm's own rule.

#include "case.hpp"

namespace cotter::rules {

void book_row(const Case& asked, Findings& out)
{
    const Book book = asked.question.book.value_or(Book{});
    if (!yes(book.opening_check_done))
        out.add(Code::book_unchecked);
    if (yes(book.damaged))
        out.add(Code::book_damaged);
    if (yes(book.forked))
        out.add(Code::book_forked);
}

} // namespace cotter::rules
