#include "json_mutator.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <random>
#include <sstream>
#include <string>
#include <vector>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace cotter::tests {

namespace {

using Json = nlohmann::json;
using Random = std::minstd_rand;

// Ends of ranges, and what is easily taken for something else.
Json odd_value(Random& random)
{
    static const std::array<Json, 24> odd{nullptr,
                                          true,
                                          false,
                                          0,
                                          1,
                                          -1,
                                          999'999'999,
                                          1'000'000'000,
                                          1'000'000'001,
                                          -1'000'000'000,
                                          9'000'000'000'000'000,
                                          INT64_MAX,
                                          INT64_MIN,
                                          UINT64_MAX,
                                          0.5,
                                          "",
                                          "any",
                                          "2024-02-29",
                                          "9999-12-31",
                                          "0000-01-01",
                                          "1970-01-01",
                                          Json::array(),
                                          Json::object(),
                                          "\xF0\x9F\x8F\x97\xCC\x81"};
    return odd[random() % odd.size()];
}

void collect(Json& value, std::vector<Json*>& all)
{
    all.push_back(&value);
    if (value.is_structured())
        for (Json& each : value)
            collect(each, all);
}

void change_list_or_object(Json& value, const Json& other, Random& random)
{
    if (value.empty()) {
        if (value.is_array())
            value.push_back(other);
        else
            value["id"] = other;
        return;
    }
    auto at = value.begin();
    std::advance(at, static_cast<std::ptrdiff_t>(random() % value.size()));
    if (random() % 2 == 0)
        value.erase(at);
    else if (value.is_array())
        value.push_back(*at);
    else
        *at = other;
}

void change_one(Json& json, Random& random)
{
    std::vector<Json*> all;
    collect(json, all);
    Json& value = *all[random() % all.size()];
    const Json other = *all[random() % all.size()];
    switch (random() % 5) {
    case 0: value = odd_value(random); break;
    case 1: value = other; break;
    case 2:
        if (value.is_number_integer())
            value = static_cast<std::int64_t>(value.get<std::uint64_t>() + random() % 7 - 3);
        break;
    case 3:
        if (value.is_structured())
            change_list_or_object(value, other, random);
        break;
    default:
        if (value.is_string() && random() % 2 == 0) {
            std::string text = value;
            text.insert(random() % (text.size() + 1), 1, static_cast<char>('0' + random() % 75));
            value = text;
        }
    }
}

// One line of the text changed; "" if that line is not JSON.
std::string with_a_change(const std::string& text, Random& random)
{
    std::vector<std::string> lines;
    std::istringstream in{text};
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    if (lines.empty())
        return "";
    std::string& line = lines[random() % lines.size()];
    Json json = Json::parse(line, nullptr, false);
    if (json.is_discarded())
        return "";
    for (auto changes = 1 + random() % 3; changes > 0; --changes)
        change_one(json, random);
    line = json.dump(-1, ' ', false, Json::error_handler_t::replace);
    if (random() % 8 == 0)
        lines.push_back(line);
    std::string all;
    for (const std::string& each : lines)
        all += (all.empty() ? "" : "\n") + each;
    return all;
}

} // namespace

std::size_t mutate_json(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed)
{
    Random random{seed};
    const std::string changed =
        random() % 4 == 0 ? "" : with_a_change({reinterpret_cast<const char*>(data), size}, random);
    if (changed.empty() || changed.size() > most)
        return LLVMFuzzerMutate(data, size, most);
    std::copy(changed.begin(), changed.end(), data);
    return changed.size();
}

} // namespace cotter::tests
