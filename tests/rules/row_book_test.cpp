#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

TEST_CASE("the opening check of the book is done")
{
    for (const Flag flag : {Flag{false}, Flag{}}) {
        Question q = good_lift();
        q.book->opening_check_done = flag;
        CHECK(codes(q) == "book-unchecked() ");
    }
}

TEST_CASE("a book about which nothing is known is not checked")
{
    Question q = good_lift();
    q.book.reset();
    CHECK(codes(q) == "book-unchecked() ");
}

TEST_CASE("a damaged book and a forked book each stop and where neither was found it does not")
{
    Question q = good_lift();
    q.book->damaged.reset();
    q.book->forked.reset();
    CHECK(is_silent(q));
    q.book->damaged = true;
    CHECK(codes(q) == "book-damaged() ");
    q.book->forked = true;
    CHECK(codes(q) == "book-damaged() book-forked() ");
}

} // namespace cotter::rules
