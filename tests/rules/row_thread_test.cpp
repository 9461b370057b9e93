// Row thread. Pipe and attachment of the good question are 2,500 mm long and 800 + 300 + 50 mm deep, the clearance is
// 100 mm: level they need a gap of 2,700 and a room of 1,350 mm.

#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

template <class Change> std::string after(const Change& change)
{
    Question q = good_lift();
    change(q);
    return codes(q);
}

const std::string tight = "thread-tight(place) ";
const std::string unknown = "thread-unknown(place) ";

} // namespace

TEST_CASE("a gap that just takes the pipe level is enough and a millimetre less is not")
{
    CHECK(after([](Question& q) { q.thread->gap = 2700_mm; }) == "");
    CHECK(after([](Question& q) { q.thread->gap = 2699_mm; }) == tight);
}

TEST_CASE("a room that just takes the pipe level is enough and a millimetre less is not")
{
    CHECK(after([](Question& q) { q.thread->room = 1350_mm; }) == "");
    CHECK(after([](Question& q) { q.thread->room = 1349_mm; }) == tight);
}

TEST_CASE("the clearance is kept on both sides")
{
    CHECK(after([](Question& q) { q.thread->clearance = 750_mm; }) == ""); // 2,500 of 4,000 and 1,150 of 3,000
    CHECK(after([](Question& q) { q.thread->clearance = 751_mm; }) == tight);
}

TEST_CASE("an attachment longer than the pipe counts")
{
    Question q = good_lift();
    model(q, Role::attachment).envelope_length = 3000_mm;
    model(q, Role::attachment).tilt_limit = Millidegrees{10'000}; // its own axis needs far more
    q.thread->gap = 3200_mm;
    CHECK(is_silent(q));
    q.thread->gap = 3199_mm;
    CHECK(codes(q) == tight);
}

TEST_CASE("a socket wider than the barrel counts")
{
    Question q = good_lift();
    q.pipe->socket = 900_mm; // 900 + 350 deep
    q.thread->room = 1450_mm;
    CHECK(is_silent(q));
    q.thread->room = 1449_mm;
    CHECK(codes(q) == tight);
}

// Along its own axis at 60 degrees: 1,350 / 0.86603 + 200 / 1.73205 = 1,674.3 mm; at 59: 1,575.0 + 120.2 = 1,695.1.
TEST_CASE("a pipe may be tilted up to the model's limit")
{
    Question q = good_lift();
    model(q, Role::attachment).tilt_limit = Millidegrees{60'000};
    q.thread->room = 9000_mm;
    q.thread->gap = 1675_mm;
    CHECK(is_silent(q));
    q.thread->gap = 1674_mm;
    CHECK(codes(q) == tight);
    q.thread->gap = 1675_mm;
    model(q, Role::attachment).tilt_limit = Millidegrees{59'000};
    CHECK(codes(q) == tight);
}

TEST_CASE("a trench recorded as not strutted is not asked")
{
    CHECK(after([](Question& q) { q.thread->strutted = false, q.thread->gap = 1_mm; }) == "");
    CHECK(after([](Question& q) { q.thread->strutted.reset(), q.thread->gap = 1_mm; }) == tight);
    CHECK(after([](Question& q) { q.thread.reset(); }) == unknown);
}

TEST_CASE("every figure of the strutting must be known")
{
    for (Known<Millimetres> Strutting::*each :
         {&Strutting::gap, &Strutting::clearance, &Strutting::strut_depth, &Strutting::room}) {
        Question q = good_lift();
        (*q.thread).*each = std::nullopt;
        CHECK(codes(q) == unknown);
    }
}

TEST_CASE("the envelope of the attachment and its tilt limit must be known")
{
    for (Known<Millimetres> Model::*each : {&Model::envelope_length, &Model::above_crown, &Model::below_invert}) {
        Question q = good_lift();
        model(q, Role::attachment).*each = std::nullopt;
        CHECK(codes(q) == unknown);
    }
    CHECK(after([](Question& q) { model(q, Role::attachment).tilt_limit.reset(); }) == unknown);
}

TEST_CASE("the pipe's outside must be known")
{
    for (Known<Millimetres> Pipe::*each : {&Pipe::overall, &Pipe::barrel, &Pipe::socket}) {
        Question q = good_lift();
        (*q.pipe).*each = std::nullopt;
        CHECK(finds(q, Code::thread_unknown, "place"));
    }
}

TEST_CASE("a pipe that does not pass says the gap that would do")
{
    Question q = good_lift();
    q.thread->gap = 2699_mm;
    CHECK(finding(q, Code::thread_tight, "place")->measured == Figure{2699.0});
    CHECK(finding(q, Code::thread_tight, "place")->limit == Figure{2700.0});
}

} // namespace cotter::rules
