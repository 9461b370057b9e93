#include "mass.hpp"

#include <algorithm>
#include <numbers>

namespace cotter::rules {

namespace {

double ring_mm2(double outside, double inside) { return std::numbers::pi / 4 * (outside * outside - inside * inside); }

std::optional<double> density_of(const Pipe& pipe)
{
    if (pipe.density)
        return static_cast<double>(pipe.density->count());
    if (pipe.material == "concrete")
        return concrete_density;
    return std::nullopt;
}

// "Its length unknown: overall less effective length."
std::optional<Millimetres> socket_length_of(const Pipe& pipe)
{
    if (*pipe.socket <= *pipe.barrel)
        return Millimetres{0};
    if (pipe.socket_length)
        return pipe.socket_length;
    if (pipe.effective)
        return *pipe.overall - *pipe.effective;
    return std::nullopt;
}

std::optional<double> computed_kg(const Pipe& pipe)
{
    const auto density = density_of(pipe);
    if (!pipe.bore || !pipe.barrel || !pipe.socket || !pipe.overall || !density || *pipe.bore >= *pipe.barrel)
        return std::nullopt;
    const auto socket_length = socket_length_of(pipe);
    if (!socket_length || socket_length->count() < 0)
        return std::nullopt;
    return cylinder_kg(
        {real(*pipe.bore), real(*pipe.barrel), real(*pipe.overall), real(*pipe.socket), real(*socket_length)},
        *density);
}

} // namespace

double cylinder_kg(const PipeShape& shape, double density)
{
    double mm3 = ring_mm2(shape.barrel_mm, shape.bore_mm) * shape.length_mm;
    if (shape.socket_mm > shape.barrel_mm)
        mm3 += ring_mm2(shape.socket_mm, shape.barrel_mm) * shape.socket_length_mm;
    return mm3 * density / 1e9;
}

PipeMass mass_of(const Pipe& pipe)
{
    PipeMass mass;
    mass.computed = computed_kg(pipe);
    if (!mass.computed)
        return mass;
    const double allowance = pipe.allowance ? static_cast<double>(pipe.allowance->count()) : 0;
    const double with_allowance = *mass.computed * (100 + allowance) / 100;
    mass.used = pipe.stated ? std::max(with_allowance, static_cast<double>(pipe.stated->count())) : with_allowance;
    return mass;
}

} // namespace cotter::rules
