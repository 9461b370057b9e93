// csv_driver read: a table on standard input, its rows as JSON on standard output, or exit 1 with what is not accepted.
// csv_driver write: rows as JSON on standard input, the table on standard output.

#include "csv_in.hpp"
#include "csv_out.hpp"

#include <nlohmann/json.hpp>

#include <iostream>
#include <iterator>
#include <string>

namespace {

using namespace cotter::desk;
using Json = nlohmann::json;

int read(const std::string& text)
{
    const Table table = read_table(text);
    for (const Problem& each : table.problems())
        std::cerr << to_string(each) << '\n';
    Json rows = Json::array({table.headings()});
    for (std::size_t i = 0; i < table.rows(); ++i) {
        rows.push_back(Json::array());
        for (std::size_t j = 0; j < table.headings().size(); ++j)
            rows.back().push_back(std::string{table.text(i, j)});
    }
    if (!table.problems().empty())
        return 1;
    std::cout << rows.dump();
    return 0;
}

int write(const std::string& text)
{
    for (const Json& row : Json::parse(text))
        std::cout << csv_row(row.get<std::vector<std::string>>());
    return 0;
}

} // namespace

int main(int count, char** arguments)
{
    const std::string text{std::istreambuf_iterator<char>{std::cin}, {}};
    return count == 2 && arguments[1] == std::string{"write"} ? write(text) : read(text);
}
