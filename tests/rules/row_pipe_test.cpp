#include "good_question.hpp"

#include <doctest/doctest.h>

namespace cotter::rules {

namespace {

constexpr auto pipe_600 = "pipe-600";

// A grab without an adjustment, so that the barrel is asked by row pipe alone.
Question rigid_grab()
{
    Question q = good_lift();
    model(q, Role::attachment).adjusts = false;
    return q;
}

bool size_found(Known<Millimetres> Pipe::*length, Known<Millimetres> value)
{
    Question q = rigid_grab();
    (*q.pipe).*length = value;
    return finds(q, Code::pipe_size, pipe_600);
}

} // namespace

TEST_CASE("a bore at either limit of the model is allowed and a millimetre more is not")
{
    CHECK_FALSE(size_found(&Pipe::bore, 400_mm));
    CHECK_FALSE(size_found(&Pipe::bore, 700_mm));
    CHECK(size_found(&Pipe::bore, 399_mm));
    CHECK(size_found(&Pipe::bore, 701_mm));
    CHECK(size_found(&Pipe::bore, std::nullopt));
}

TEST_CASE("a barrel at either limit of the model is allowed and a millimetre more is not")
{
    CHECK_FALSE(size_found(&Pipe::barrel, 600_mm));
    CHECK_FALSE(size_found(&Pipe::barrel, 900_mm));
    CHECK(size_found(&Pipe::barrel, 599_mm));
    CHECK(size_found(&Pipe::barrel, 901_mm));
    CHECK(size_found(&Pipe::barrel, std::nullopt));
}

TEST_CASE("a socket at the limit of the model is allowed and a millimetre more is not")
{
    CHECK_FALSE(size_found(&Pipe::socket, 1000_mm));
    CHECK(size_found(&Pipe::socket, 1001_mm));
    CHECK(size_found(&Pipe::socket, std::nullopt));
}

TEST_CASE("where the model adjusts the barrel's limits are the setting's matter")
{
    Question q = good_lift();
    q.pipe->barrel = 901_mm;
    CHECK_FALSE(finds(q, Code::pipe_size));
    q.pipe->barrel.reset();
    CHECK(finds(q, Code::pipe_size, pipe_600));
}

TEST_CASE("a size that the model does not say stops")
{
    for (Known<Range> Model::*each : {&Model::bore, &Model::barrel, &Model::socket}) {
        Question q = rigid_grab();
        model(q, Role::attachment).*each = std::nullopt;
        CHECK(codes(q) == "pipe-size(pipe-600) ");
        model(q, Role::attachment).*each = Range{false, std::nullopt, 1000_mm};
        CHECK(codes(q) == "pipe-size(pipe-600) ");
        model(q, Role::attachment).*each = Range{true, std::nullopt, std::nullopt};
        CHECK(is_silent(q));
    }
}

TEST_CASE("an attachment that the model does not limit still needs the pipe's size")
{
    Question q = rigid_grab();
    model(q, Role::attachment).socket = Range{true, std::nullopt, std::nullopt};
    q.pipe->socket.reset();
    CHECK(finds(q, Code::pipe_size, pipe_600));
}

TEST_CASE("a length at either limit of the model is allowed and a millimetre more is not")
{
    const auto found = [](Known<Millimetres> overall) {
        Question q = good_lift();
        q.pipe->overall = overall;
        return finds(q, Code::pipe_length, pipe_600);
    };
    CHECK_FALSE(found(1000_mm));
    CHECK_FALSE(found(3000_mm));
    CHECK(found(999_mm));
    CHECK(found(3001_mm));
    CHECK(found(std::nullopt));
}

TEST_CASE("a length says the end of the range that it passes")
{
    Question q = good_lift();
    q.pipe->overall = 3001_mm;
    CHECK(finding(q, Code::pipe_length, pipe_600)->limit == Figure{3000.0});
    q.pipe->overall = 999_mm;
    CHECK(finding(q, Code::pipe_length, pipe_600)->limit == Figure{1000.0});
}

TEST_CASE("a length that the model does not say stops")
{
    Question q = good_lift();
    model(q, Role::attachment).length.reset();
    CHECK(codes(q) == "pipe-length(pipe-600) ");
}

TEST_CASE("a straight pipe needs no name in the model and any other shape does")
{
    for (const Shape shape : {Shape::bend, Shape::junction, Shape::cut, Shape::other}) {
        Question q = good_lift();
        q.pipe->shape = shape;
        CHECK(codes(q) == "pipe-shape(pipe-600) ");
        model(q, Role::attachment).shapes = {shape};
        CHECK(is_silent(q));
    }
}

TEST_CASE("a shape that is not known stops")
{
    Question q = good_lift();
    q.pipe->shape.reset();
    CHECK(codes(q) == "pipe-shape(pipe-600) ");
}

TEST_CASE("a pipe of the model's greatest mass is allowed and a kilogram more is not")
{
    Question q = good_lift();
    q.pipe->stated = 1500_kg;
    CHECK(is_silent(q));
    q.pipe->stated = 1501_kg;
    CHECK(codes(q) == "pipe-mass(pipe-600) ");
}

TEST_CASE("a computed mass is compared unrounded")
{
    Question q = good_lift();
    q.pipe->stated.reset(); // 1,374.447 kg computed
    model(q, Role::attachment).greatest_pipe = 1375_kg;
    CHECK_FALSE(finds(q, Code::pipe_mass));
    model(q, Role::attachment).greatest_pipe = 1374_kg;
    CHECK(finds(q, Code::pipe_mass, pipe_600));
}

TEST_CASE("a mass that is not known stops")
{
    Question q = good_lift();
    q.pipe->effective.reset();
    q.pipe->socket_length.reset();
    CHECK(is_silent(q)); // no socket, so neither is needed
    q.pipe->bore.reset();
    CHECK(finds(q, Code::pipe_mass, pipe_600));
}

TEST_CASE("a greatest mass that the model does not say stops")
{
    Question q = good_lift();
    model(q, Role::attachment).greatest_pipe.reset();
    CHECK(codes(q) == "pipe-mass(pipe-600) ");
}

TEST_CASE("a material that the model does not name or that is not known stops")
{
    Question q = good_lift();
    q.pipe->material = "clay";
    CHECK(codes(q) == "pipe-material(pipe-600) ");
    model(q, Role::attachment).materials.push_back("clay");
    CHECK(is_silent(q));
    q.pipe->material.reset();
    CHECK(codes(q) == "pipe-material(pipe-600) ");
}

// pi/4 x (0.8^2 - 0.6^2) m2 x 2.5 m x 2,500 kg/m3 = 1,374.447 kg, 85 % of it is 1,168.28 kg.
TEST_CASE("a stated mass under 85 % of the computed one is doubted")
{
    Question q = good_lift();
    q.pipe->stated = 1169_kg;
    CHECK(is_silent(q));
    q.pipe->stated = 1168_kg;
    CHECK(codes(q) == "pipe-mass-differs(pipe-600) ");
    q.pipe->stated.reset();
    CHECK(is_silent(q));
}

TEST_CASE("the allowance does not count where a stated mass is doubted")
{
    Question q = good_lift();
    q.pipe->stated = 1169_kg;
    q.pipe->allowance = Percent{5};
    CHECK_FALSE(finds(q, Code::pipe_mass_differs));
}

TEST_CASE("with no model every figure of the model is unknown")
{
    Question q = good_lift();
    item(q, Role::attachment).model.reset();
    for (const Code code : {Code::pipe_size, Code::pipe_length, Code::pipe_mass, Code::pipe_material})
        CHECK(finds(q, code, pipe_600));
}

TEST_CASE("with no pipe every figure of the pipe is unknown")
{
    Question q = good_lift();
    q.pipe.reset();
    for (const Code code : {Code::pipe_size, Code::pipe_length, Code::pipe_shape, Code::pipe_mass, Code::pipe_material})
        CHECK(finds(q, code, ""));
}

} // namespace cotter::rules
