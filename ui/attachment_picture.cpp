#include "attachment_picture.hpp"

#include "setting.hpp"
#include "standing.hpp"

#include <algorithm>

namespace cotter::ui {

using namespace rules;

double length_of(Known<Millimetres> length) { return length ? static_cast<double>(length->count()) : 0; }

namespace {

figures::Outline outline_of(const desk::Json& shape)
{
    figures::Outline outline;
    const auto points = shape.value("points", std::vector<double>{});
    for (std::size_t i = 0; i + 1 < points.size(); i += 2)
        outline.points.push_back({points[i], points[i + 1]});
    outline.mirrored = shape.value("mirrored", false);
    outline.follows_barrel = shape.value("follows_barrel", false);
    return outline;
}

double middle_barrel(const Model& model)
{
    double low = 1e9, high = 0;
    for (const State& state : model.states) {
        low = std::min(low, length_of(state.least));
        high = std::max(high, length_of(state.greatest));
    }
    if (model.barrel && !model.barrel->any)
        return (length_of(model.barrel->least) + length_of(model.barrel->greatest)) / 2;
    return high > 0 ? (low + high) / 2 : 0;
}

} // namespace

figures::AttachmentPicture picture_of(const desk::Json& model_doc, const Model& model, const Question& question)
{
    figures::AttachmentPicture picture;
    for (const auto& shape : model_doc.value("outline", desk::Json::array()))
        picture.outlines.push_back(outline_of(shape));
    const auto stands = standing_of(question.setting_records);
    for (const auto& hole : model_doc.value("holes", desk::Json::array())) {
        const std::string name = hole.value("state", "");
        const State* state = state_named(model, name);
        const bool wanted = state && question.pipe && question.pipe->barrel && serves(*state, *question.pipe->barrel);
        picture.states.push_back({name,
                                  {hole.value("x_mm", 0.0), hole.value("y_mm", 0.0)},
                                  !stands.disputed && stands.state == name,
                                  wanted});
    }
    picture.barrel = question.pipe ? length_of(question.pipe->barrel) : 0;
    picture.bore = question.pipe ? length_of(question.pipe->bore) : 0;
    picture.middle_barrel = middle_barrel(model);
    return picture;
}

} // namespace cotter::ui
