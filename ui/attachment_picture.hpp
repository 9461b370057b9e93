#pragma once

// An attachment from its own outline data, with its setting as it stands and the pipe of a question in its jaws.

#include "attachment.hpp"
#include "question.hpp"
#include "register.hpp"

namespace cotter::ui {

double length_of(rules::Known<rules::Millimetres> length); // mm; 0: not known

figures::AttachmentPicture picture_of(const desk::Json& model_doc, const rules::Model& model,
                                      const rules::Question& question);

} // namespace cotter::ui
