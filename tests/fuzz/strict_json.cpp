// Strict JSON: nothing is taken that nlohmann's own reader refuses, nothing with a doubled key, and what is written
// again reads the same.

#include "form.hpp"
#include "fuzzing.hpp"

#include <set>
#include <vector>

using namespace cotter;
using namespace cotter::tests;
using records::Json;

namespace {

// Counts keys by the reader's events, not by what is built of them.
class Keys : public nlohmann::json_sax<Json> {
public:
    bool null() override { return true; }
    bool boolean(bool) override { return true; }
    bool number_integer(number_integer_t) override { return true; }
    bool number_unsigned(number_unsigned_t) override { return true; }
    bool number_float(number_float_t, const string_t&) override { return true; }
    bool string(string_t&) override { return true; }
    bool binary(binary_t&) override { return true; }
    bool start_array(std::size_t) override { return true; }
    bool end_array() override { return true; }
    bool start_object(std::size_t) override
    {
        open_.emplace_back();
        return true;
    }
    bool end_object() override
    {
        open_.pop_back();
        return true;
    }
    bool key(string_t& name) override
    {
        doubled = doubled || !open_.back().insert(name).second;
        return true;
    }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override { return false; }

    bool doubled = false;

private:
    std::vector<std::set<std::string>> open_;
};

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    const std::string text = text_of(data, size);
    const Json json = records::parse_strictly(text);
    must(Json::accept(text), "what is taken is JSON");
    Keys keys;
    Json::sax_parse(text, &keys);
    must(!keys.doubled, "no key stands twice");
    must(records::parse_strictly(json.dump()) == json, "what is written reads the same");
    return 0;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return 0;
}
