#pragma once

// The JSON form of a question: what `judge` reads, and what a lift asked for is recorded with.

#include "form.hpp"

namespace cotter::records {

// One line; FormError if it is not an object with an id, has an unknown or doubled field or a wrong type.
rules::Question read_question(std::string_view line);
Json write_question(const rules::Question& question);
Json question_schema();

// The parts of a question that records share with it. Other keys of a record's body are left alone.
rules::Model read_model(const Json& body);
rules::Pipe read_pipe(const Json& body);
rules::Chart read_chart(const Json& body);
rules::Report read_report(const Json& body);
rules::Item read_item(const Json& body);
rules::Event read_event(const Json& body);
rules::Plan read_plan(const Json& body);
rules::Move read_move(const Json& body);
rules::SetUp read_set_up(const Json& body);
rules::Person read_person(const Json& body);
rules::Place read_place(const Json& body);
rules::Trench read_trench(const Json& body);
rules::Strutting read_strutting(const Json& body);
rules::Order read_order(const Json& body);
rules::Site read_site(const Json& body);
rules::Shift read_shift(const Json& body);
rules::Answer read_answer(const Json& body);
rules::SettingRecord read_setting_record(const Json& body);
rules::ClockNotice read_clock_notice(const Json& body);

} // namespace cotter::records
