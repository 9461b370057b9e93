// seeds FOLDER: makes FOLDER/NAME with inputs to begin from, for each fuzzer that has none in the sources.

#include "bundle_seed.hpp"
#include "fuzzing.hpp"
#include "kinds.hpp"
#include "question_form.hpp"
#include "receipt.hpp"
#include "rules/good_question.hpp"

#include <vector>

using namespace cotter;
using namespace cotter::tests;
using records::Json;
namespace fs = std::filesystem;

namespace {

class Seeds {
public:
    Seeds(const fs::path& folder, const std::string& name) : folder_{folder / name} { fs::create_directories(folder_); }
    void add(const std::string& text) { write_to(folder_ / std::to_string(number_++), text); }

private:
    fs::path folder_;
    int number_ = 0;
};

Json entry_line(const records::Kind& kind, const std::string& by)
{
    return {{"kind", kind.name},
            {"about", kind.schema.at("x-example-about")},
            {"by", by},
            {"body", kind.schema.at("examples").at(0)}};
}

records::Record record_of(const records::Kind& kind, const records::DeviceKey& key)
{
    records::Entry entry;
    entry.kind = kind.name;
    entry.about = kind.schema.at("x-example-about").get<std::string>();
    entry.who = entry.by = "quill";
    entry.how = "name only";
    entry.body = kind.schema.at("examples").at(0);
    return records::sign(entry, key, {});
}

// An example of every kind, and what may take a stop away.
void of_kinds(const fs::path& folder, const records::DeviceKey& key)
{
    Seeds record{folder, "record"}, accept{folder, "accept"}, json{folder, "strict_json"};
    for (const records::Kind& kind : records::kinds()) {
        record.add(record_of(kind, key).bytes);
        json.add(kind.schema.at("examples").at(0).dump());
        for (const char* by : {"farrow", "quill", "hallam", "penrose"})
            accept.add(entry_line(kind, by).dump());
    }
    for (const char* by : {"farrow", "hallam"}) {
        accept.add(Json{{"kind", "stop_lifted"},
                        {"about", "cl-02"},
                        {"by", by},
                        {"body", {{"stop", "#44"}, {"why", "Jaw is straight"}}}}
                       .dump());
        accept.add(Json{{"kind", "correction"},
                        {"about", "cl-02"},
                        {"by", by},
                        {"body", {{"corrects", "#44"}, {"why", "wrong unit"}, {"void", true}}}}
                       .dump());
    }
}

void of_text(const fs::path& folder, const records::DeviceKey& key)
{
    Seeds{folder, "receipt"}.add(to_text(make_receipt(key, {18, records::sha256("head")}, rules::Instant{1795590000})));
    const auto bundle = bundle_seed(key);
    Seeds{folder, "bundle"}.add(bundle.at(records::list_file) + '\0' + bundle.at(records::records_file));
    Seeds{folder, "key_file"}.add(key.seed_hex() + "\n");
    Seeds numbers{folder, "numbers"};
    for (const char* text : {"2600", "-1.5", "+.25", "2024-02-29", "2026-11-25T07:00:00Z"})
        numbers.add(text);
    Seeds store{folder, "store"};
    store.add(std::string{"\x01\x00\x10\x00\x03", 5});
    Seeds{folder, "csv_in"}.add("id;Wall (mm);name\r\np-1;67;\"DN 450; \"\"left\"\" (invented)\"\r\np-2;;=1+1\r\n");
    Seeds charts{folder, "chart_csv"};
    for (const auto& each : fs::directory_iterator{fs::path{COTTER_SOURCE} / "sample_site/charts"})
        charts.add(bytes_in(each.path()));
    charts.add("over,height_m,radius_m,rated_kg\nfront,0,3,5000\nfront,0,4.5,\nside,-1.5,3,2200.5\n");
    Seeds judge{folder, "judge"};
    judge.add(records::write_question(rules::good_lift()).dump());
    judge.add(records::write_question(rules::good_use()).dump());
}

} // namespace

int main(int count, char** words)
{
    if (count != 2)
        return 2;
    const auto key = records::DeviceKey::from_seed(std::string(64, '7'));
    of_kinds(words[1], key);
    of_text(words[1], key);
}
