#include "command.hpp"
#include "register.hpp"
#include "store_error.hpp"

namespace cotter::cli {

namespace {

int refuse(const std::string& why)
{
    std::cout.flush();
    std::cerr << "cotter: " << one_line(why) << '\n';
    return bad_input;
}

void refuse_other_than_text(int count, const char* const* arguments)
{
    for (int i = 1; i < count; ++i)
        try {
            Json(arguments[i]).dump();
        } catch (const Json::exception&) {
            throw BadInput{"word " + std::to_string(i) + " of the command is not UTF-8; text in UTF-8 is accepted"};
        }
}

void add_all(Command app, Chosen& chosen)
{
    for (const auto add :
         {add_due,     add_weigh,  add_sling,   add_reach,  add_thread,  add_judge,   add_lift, add_record, add_list,
          add_receipt, add_backup, add_salvage, add_page,   add_witness, add_pin,     add_plan, add_laid,   add_board,
          add_import,  add_export, add_day,     add_bundle, add_verify,  add_screens, add_help})
        add(app, chosen);
}

} // namespace

int run(int count, const char* const* arguments)
{
    constexpr auto says =
        "Cotter says MAY LIFT or DO NOT LIFT, why, and what clears it. It supports, and never replaces, the lift plan, "
        "the maker's instructions, local law and competent people.";
    Chosen chosen;
    try {
        refuse_other_than_text(count, arguments);
        if (!parse(
                says, [&](Command program) { add_all(program, chosen); }, count, arguments))
            return done;
        const int code = chosen ? chosen() : bad_input;
        if (!std::cout.flush())
            return refuse("standard output cannot be written; an open file, pipe or terminal is accepted");
        return code;
    } catch (const std::exception& e) {
        return refuse(e.what());
    }
}

} // namespace cotter::cli
