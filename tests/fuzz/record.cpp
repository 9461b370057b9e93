// A record's stored bytes: what is read and signed again reads the same; a body that its kind accepts is accepted
// again once its private values are set apart, as `verify` will ask; and it folds to a fact.

#include "fact.hpp"
#include "fuzzing.hpp"
#include "json_mutator.hpp"
#include "kinds.hpp"
#include "private_data.hpp"

using namespace cotter;
using namespace cotter::tests;
using records::Record;

namespace {

const records::DeviceKey& key()
{
    static const auto key = records::DeviceKey::from_seed(std::string(64, '7'));
    return key;
}

Record written_again(const Record& record)
{
    const Record again = records::sign(record.entry, key(), {1, record.prev});
    must(records::is_signed_by(key().public_hex(), again.bytes, again.sig), "its signature fits");
    const Record read = records::parse_record(again.bytes, again.sig);
    must(read.hash == again.hash && read.prev == record.prev, "it reads the same");
    must(records::sign(read.entry, key(), {1, read.prev}).bytes == again.bytes, "it is written the same");
    return read;
}

bool is_accepted(const records::Kind& kind, const records::Json& body)
try {
    records::check_body(kind, body);
    return true;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return false;
}

void fold_each_fact(const Record& record)
{
    const auto nothing = [](const std::string&) { return std::optional<Record>{}; };
    for (const records::FactKey& fact : touched_by(record, nothing))
        (void)records::fold(fact, {record});
}

} // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed)
{
    return mutate_json(data, size, most, seed);
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
try {
    Record record = written_again(records::parse_record(text_of(data, size), ""));
    const records::Kind* kind = records::find_kind(record.entry.kind);
    if (!kind || !is_accepted(*kind, record.entry.body))
        return 0;
    const auto rows = records::set_apart(record.entry, *kind);
    must(is_accepted(*kind, record.entry.body), "the body that is stored is accepted");
    for (const records::PrivateRow& row : rows)
        must(record.entry.body[row.field] == row.hash(), "the record holds the hash of what was set apart");
    fold_each_fact(record);
    return 0;
} catch (const records::FormError& e) {
    must_be_a_line(e.what());
    return 0;
}
