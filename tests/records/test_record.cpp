// A record is what was signed, byte for byte.

#include "private_data.hpp"
#include "record.hpp"

#include <doctest/doctest.h>

#include <tuple>

using namespace cotter;
using namespace cotter::records;

TEST_SUITE_BEGIN("record");

namespace {

const std::string seed = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60"; // RFC 8032, 7.1, test 1

Entry some_entry()
{
    Entry entry;
    entry.kind = "pipe";
    entry.about = "sk-450";
    entry.who = "hallam";
    entry.by = "quill";
    entry.how = "copy";
    entry.body = {
        {"name", "DN 450, \"bell\" \u00d8"}, {"stated_kg", 690}, {"copy", {{"legible", true}}}, {"after", nullptr}};
    entry.at = rules::Instant{1795590000};
    entry.day = rules::utc_day(entry.at);
    entry.boot = "8a2f";
    entry.boot_seconds = 77;
    entry.after = {std::string(64, 'a'), std::string(64, 'b')};
    return entry;
}

Record some_record() { return sign(some_entry(), DeviceKey::from_seed(seed), {41, std::string(64, 'c')}); }

} // namespace

// Source: RFC 8032, section 7.1, test 1: the public key of this seed.
TEST_CASE("a device is named after the SHA-256 of its public key")
{
    const auto key = DeviceKey::from_seed(seed);
    CHECK(key.public_hex() == "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
    CHECK(key.device() == sha256(from_hex(key.public_hex())));
    CHECK(key.seed_hex() == seed);
    CHECK(some_record().device == key.device());
}

// Source: FIPS 180-4; "abc" is the worked example of the standard's own example values.
TEST_CASE("SHA-256 gives the published values, and a record's hash has its prefix")
{
    CHECK(sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK(sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    CHECK(record_hash("abc") == sha256(std::string{"cotter-record-1\0", 16} + "abc"));
}

TEST_CASE("a record has the place after the head it was given, and one to start with")
{
    CHECK(some_record().seq == 42);
    CHECK(some_record().prev == std::string(64, 'c'));
    const Record first = sign(some_entry(), DeviceKey::from_seed(seed), {});
    CHECK(first.seq == 1);
    CHECK(first.prev == "");
}

TEST_CASE("the bytes are JSON with sorted keys, without white space, and integers only")
{
    const Record record = some_record();
    const Json json = Json::parse(record.bytes);
    CHECK(json.dump() == record.bytes); // nlohmann's objects are sorted
    std::string last;
    for (const auto& [key, value] : json.items()) {
        CHECK(last < key);
        CHECK_FALSE(value.is_number_float());
        last = key;
    }
    for (const char* key : {"about", "after", "at", "body", "body_version", "boot", "boot_seconds", "by", "day",
                            "device", "how", "kind", "prev", "seq", "who"})
        CHECK(json.contains(key));
    CHECK(json.size() == 16);
}

TEST_CASE("a record read again is the record that was signed")
{
    const Record written = some_record();
    const Record read = parse_record(written.bytes, written.sig);
    CHECK(read.device == written.device);
    CHECK(read.seq == written.seq);
    CHECK(read.prev == written.prev);
    CHECK(read.hash == written.hash);
    CHECK(read.bytes == written.bytes);
    CHECK(read.sig == written.sig);
    const Entry &a = read.entry, b = some_entry();
    CHECK(std::tie(a.kind, a.about, a.who, a.by, a.how, a.at, a.day, a.boot, a.boot_seconds, a.after) ==
          std::tie(b.kind, b.about, b.who, b.by, b.how, b.at, b.day, b.boot, b.boot_seconds, b.after));
    CHECK(a.body == b.body);
}

TEST_CASE("signing the same entry twice gives the same bytes and the same signature")
{
    CHECK(some_record().bytes == some_record().bytes);
    CHECK(some_record().sig == some_record().sig);
}

TEST_CASE("a change of any byte changes the hash and breaks the signature")
{
    const auto key = DeviceKey::from_seed(seed);
    const Record record = some_record();
    REQUIRE(is_signed_by(key.public_hex(), record.bytes, record.sig));
    for (std::size_t i = 0; i < record.bytes.size(); ++i) {
        std::string bytes = record.bytes;
        bytes[i] = static_cast<char>(bytes[i] ^ (1 << (i % 8)));
        CAPTURE(i);
        CHECK(record_hash(bytes) != record.hash);
        CHECK_FALSE(is_signed_by(key.public_hex(), bytes, record.sig));
    }
    CHECK_FALSE(is_signed_by(key.public_hex(), record.bytes + " ", record.sig));
    CHECK_FALSE(is_signed_by(key.public_hex(), record.bytes.substr(1), record.sig));
}

TEST_CASE("a change of any byte of the signature or the key breaks the signature")
{
    const std::string key = DeviceKey::from_seed(seed).public_hex();
    const Record record = some_record();
    for (std::size_t i = 0; i < record.sig.size(); ++i) {
        std::string sig = record.sig;
        sig[i] = sig[i] == '0' ? '1' : '0';
        CHECK_FALSE(is_signed_by(key, record.bytes, sig));
    }
    for (std::size_t i = 0; i < key.size(); ++i) {
        std::string other = key;
        other[i] = other[i] == '0' ? '1' : '0';
        CHECK_FALSE(is_signed_by(other, record.bytes, record.sig));
    }
    for (const std::string sig : {"", "00", "not hex"})
        CHECK_FALSE(is_signed_by(key, record.bytes, sig));
}

TEST_CASE("a signature has one spelling only")
{
    const Record record = some_record();
    std::string shouted = record.sig;
    for (char& c : shouted)
        c = c >= 'a' && c <= 'f' ? static_cast<char>(c - 'a' + 'A') : c;
    CHECK_FALSE(is_signed_by(DeviceKey::from_seed(seed).public_hex(), record.bytes, shouted));
}

TEST_CASE("what is signed as a record cannot pass for anything else")
{
    const auto key = DeviceKey::from_seed(seed);
    const Record record = some_record();
    const std::string prefixed = std::string{record_prefix} + record.bytes;
    CHECK_FALSE(is_signed_by(key.public_hex(), prefixed, record.sig));
}

TEST_CASE("bytes that are no record are refused, and so are those of a newer program")
{
    const std::string good = some_record().bytes;
    CHECK_THROWS_AS(parse_record("", ""), FormError);
    CHECK_THROWS_AS(parse_record("{}", ""), FormError);
    CHECK_THROWS_AS(parse_record("[1]", ""), FormError);
    CHECK_THROWS_AS(parse_record(good.substr(1), ""), FormError);
    Json newer = Json::parse(good);
    newer["body_version"] = body_version + 1;
    CHECK_THROWS_AS(parse_record(newer.dump(), ""), FormError);
    const Json whole = Json::parse(good);
    for (const auto& [key, unused] : whole.items()) {
        Json without = whole, wrong = whole;
        without.erase(key);
        wrong[key] = key == "body" ? Json() : Json::array({1});
        CAPTURE(without.dump());
        if (key != "roles") // see below
            CHECK_THROWS_AS(parse_record(without.dump(), ""), FormError);
        if (key != "body")
            CHECK_THROWS_AS(parse_record(wrong.dump(), ""), FormError);
    }
}

TEST_CASE("a number that is not whole, or that 64 bits with a sign do not hold, is no record's")
{
    for (const char* field : {"seq", "at", "boot_seconds", "body_version"})
        for (const Json& value : {Json(0.5), Json(1e300), Json(UINT64_MAX)}) {
            Json json = Json::parse(some_record().bytes);
            json[field] = value;
            CAPTURE(json.dump());
            CHECK_THROWS_AS(parse_record(json.dump(), ""), FormError);
        }
}

TEST_CASE("a record that was written before roles stood in it has none")
{
    std::string bytes = some_record().bytes;
    const std::string roles = "\"roles\":[],";
    REQUIRE(bytes.find(roles) != std::string::npos);
    bytes.erase(bytes.find(roles), roles.size());
    CHECK(parse_record(bytes, "").entry.roles.empty());
}

TEST_CASE("hexadecimal is read as it is written, and anything else is refused")
{
    CHECK(from_hex("00ff10") == std::string{"\x00\xff\x10", 3});
    CHECK(to_hex(from_hex("00ff10")) == "00ff10");
    CHECK(from_hex("") == "");
    for (const char* text : {"0", "0g", "0x00", " 00", "00 ", "00\n"})
        CHECK_THROWS_AS(from_hex(text), std::invalid_argument);
    CHECK_THROWS_AS(DeviceKey::from_seed("00"), std::invalid_argument);
}

TEST_CASE("a private value is set apart, and the record holds its salted hash only")
{
    Entry entry = some_entry();
    entry.kind = "person";
    entry.about = "hallam";
    entry.body = {{"name", "O. Hallam (invented)"}, {"firm", "Ridgeway"}};
    const auto rows = set_apart(entry, *find_kind("person"));
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].subject == "person hallam");
    CHECK(rows[0].field == "name");
    CHECK(rows[0].value == "O. Hallam (invented)");
    CHECK(rows[0].salt.size() == 32);
    CHECK(entry.body["name"] == sha256(from_hex(rows[0].salt) + "O. Hallam (invented)"));
    CHECK(entry.body["firm"] == "Ridgeway");
    CHECK(sign(entry, DeviceKey::from_seed(seed), {}).bytes.find("Hallam") == std::string::npos);
}

TEST_CASE("the same private value has another hash each time")
{
    Entry one = some_entry(), two = some_entry();
    one.body = two.body = {{"name", "O. Hallam"}};
    set_apart(one, *find_kind("person"));
    set_apart(two, *find_kind("person"));
    CHECK(one.body["name"] != two.body["name"]);
}

TEST_CASE("a private value that is not given leaves nothing apart")
{
    Entry entry = some_entry();
    entry.body = {{"units", {"u"}}, {"examiner", nullptr}};
    CHECK(set_apart(entry, *find_kind("examination_report")).empty());
    CHECK(entry.body["examiner"].is_null());
}

TEST_SUITE_END();
