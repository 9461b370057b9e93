#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

Question hook_owned(Known<Owner> owner)
{
    Question q = good_lift();
    item(q, Role::hook).owner = owner;
    return q;
}

Question without_copy(Question q)
{
    report(q, Role::hook).copy.here = false;
    return q;
}

} // namespace

TEST_CASE("gear of others and of an unknown owner needs its report here")
{
    for (const Known<Owner> owner :
         {Known<Owner>{Owner::hired}, Known<Owner>{Owner::lent}, Known<Owner>{Owner::cross_hired}, Known<Owner>{}}) {
        CHECK(is_silent(hook_owned(owner)));
        CHECK(codes(without_copy(hook_owned(owner))) == "evidence-missing(K1) ");
    }
}

TEST_CASE("a copy that is not legible or not known to be is no copy")
{
    for (const Copy& copy : {Copy{false, true}, Copy{std::nullopt, true}, Copy{true, std::nullopt}, Copy{}}) {
        Question q = good_lift();
        report(q, Role::hook).copy = copy;
        CHECK(codes(q) == "evidence-missing(K1) ");
    }
}

TEST_CASE("own gear needs no copy here") { CHECK(is_silent(without_copy(hook_owned(Owner::own)))); }

TEST_CASE("own gear from another own site has a note without a copy")
{
    Question q = hook_owned(Owner::own);
    item(q, Role::hook).between_own_sites = true;
    CHECK(is_silent(q));
    CHECK(codes(without_copy(q)) == "evidence-own-sites(K1) ");
}

TEST_CASE("hired gear from another own site is still hired")
{
    Question q = without_copy(hook_owned(Owner::hired));
    item(q, Role::hook).between_own_sites = true;
    CHECK(codes(q) == "evidence-missing(K1) ");
}

TEST_CASE("without any paper only the examination is missing")
{
    Question q = good_lift();
    remove_report(q, Role::hook);
    CHECK(codes(q) == "exam-none(K1) ");
}

TEST_CASE("the copy of the governing paper counts and not that of an older one")
{
    Question q = good_lift();
    Report older = report(q, Role::hook);
    older.id = "R-old";
    older.examined = day("2026-03-01");
    q.reports.push_back(older);
    CHECK(codes(without_copy(q)) == "evidence-missing(K1) ");
}

} // namespace cotter::rules
