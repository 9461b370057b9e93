#include "question_form.hpp"

#include "question_fields.hpp"

#include <set>

namespace cotter::records {

using namespace rules;

namespace {

// Ids in a list are unique; so are the tags of the items.
template <class List, class Key> void refuse_doubled(const char* list, const List& values, Key key)
{
    std::set<Id> seen;
    for (const auto& each : values)
        if (const Known<Id> id = key(each); id && !seen.insert(*id).second)
            throw FormError{std::string{list} + ": \"" + *id + "\" stands twice; each id once is accepted"};
}

// One of each in a load path, but for hooks and slings: a second would stand in for the first, unseen.
void refuse_doubled_roles(const std::vector<Item>& items)
{
    std::set<Role> seen;
    for (std::size_t i = 0; i < items.size(); ++i)
        if (const auto role = items[i].role;
            role && *role != Role::hook && *role != Role::sling && !seen.insert(*role).second)
            throw FormError{"items[" + std::to_string(i) +
                            "].role: a second one is not accepted; one of each is, but for "
                            "hooks and slings"};
}

void refuse_doubled(const Question& question)
{
    refuse_doubled_roles(question.items);
    const auto id = [](const auto& each) { return each.id; };
    refuse_doubled("items", question.items, [](const Item& item) { return Known<Id>{item.tag}; });
    refuse_doubled("reports", question.reports, id);
    refuse_doubled("events", question.events, id);
    refuse_doubled("setting_records", question.setting_records, id);
    for (const Item& item : question.items) {
        refuse_doubled("stops", item.stops, id);
        refuse_doubled("interims", item.interims, id);
        refuse_doubled("declarations", item.declarations, id);
        refuse_doubled("sheet", item.sheet, id);
    }
}

} // namespace

Question read_question(std::string_view line)
{
    const Json json = parse_strictly(line);
    if (!json.is_object() || !json.contains("id") || !json["id"].is_string())
        throw FormError{"id: an object with an id (a text) is accepted"};
    Question question = read_form<Question>(json, Strictness::strict);
    for (std::size_t i = 0; i < question.items.size(); ++i)
        if (!json["items"][i].contains("tag") || !json["items"][i]["tag"].is_string())
            throw FormError{"items[" + std::to_string(i) + "].tag: a text is accepted"};
    refuse_doubled(question);
    return question;
}

Json write_question(const Question& question) { return write_form(question); }

Json question_schema()
{
    Json schema = SchemaMaker::object_schema<Question>();
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
    schema["title"] = "A question to the decision";
    schema["required"] = Json::array({"id"});
    return schema;
}

Model read_model(const Json& body) { return read_form<Model>(body, Strictness::lenient); }
Pipe read_pipe(const Json& body) { return read_form<Pipe>(body, Strictness::lenient); }
Chart read_chart(const Json& body) { return read_form<Chart>(body, Strictness::lenient); }
Report read_report(const Json& body) { return read_form<Report>(body, Strictness::lenient); }
Item read_item(const Json& body) { return read_form<Item>(body, Strictness::lenient); }
Event read_event(const Json& body) { return read_form<Event>(body, Strictness::lenient); }
Plan read_plan(const Json& body) { return read_form<Plan>(body, Strictness::lenient); }
Move read_move(const Json& body) { return read_form<Move>(body, Strictness::lenient); }
SetUp read_set_up(const Json& body) { return read_form<SetUp>(body, Strictness::lenient); }
Person read_person(const Json& body) { return read_form<Person>(body, Strictness::lenient); }
Place read_place(const Json& body) { return read_form<Place>(body, Strictness::lenient); }
Trench read_trench(const Json& body) { return read_form<Trench>(body, Strictness::lenient); }
Strutting read_strutting(const Json& body) { return read_form<Strutting>(body, Strictness::lenient); }
Order read_order(const Json& body) { return read_form<Order>(body, Strictness::lenient); }
Site read_site(const Json& body) { return read_form<Site>(body, Strictness::lenient); }
Shift read_shift(const Json& body) { return read_form<Shift>(body, Strictness::lenient); }
Answer read_answer(const Json& body) { return read_form<Answer>(body, Strictness::lenient); }
SettingRecord read_setting_record(const Json& body) { return read_form<SettingRecord>(body, Strictness::lenient); }
ClockNotice read_clock_notice(const Json& body) { return read_form<ClockNotice>(body, Strictness::lenient); }

} // namespace cotter::records
