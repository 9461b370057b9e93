// The hash of a PIN, against the reference implementation of Argon2.

#include "pin.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <memory>
#include <string>

namespace records = cotter::records;

namespace {

// Source: Debian 12, package argon2 0~20171227, the reference implementation (RFC 9106 describes it):
//   printf PIN | argon2 SALT -id -t 2 -k 65536 -p 1 -l 32 -e
std::string reference(const std::string& pin, const std::string& salt)
{
    const std::string command = "printf " + pin + " | argon2 " + salt + " -id -t 2 -k 65536 -p 1 -l 32 -e";
    const std::unique_ptr<FILE, int (*)(FILE*)> out{popen(command.c_str(), "r"), pclose};
    std::string text;
    for (int c = out ? std::fgetc(out.get()) : EOF; c != EOF && c != '\n'; c = std::fgetc(out.get()))
        text += static_cast<char>(c);
    return text;
}

} // namespace

TEST_CASE("outside: what the reference implementation of Argon2id hashed is the same PIN here, and no other")
{
    const std::string hash = reference("402716", "0123456789abcdef");
    REQUIRE(hash.starts_with("$argon2id$v=19$m=65536,t=2,p=1$"));
    CHECK(records::is_pin(hash, "402716"));
    CHECK_FALSE(records::is_pin(hash, "402717"));
}

TEST_CASE("outside: our hashes say Argon2id with 64 MiB and two passes, as RFC 9106 names the parameters, each with "
          "its own salt")
{
    const std::string one = records::hash_pin("402716"), two = records::hash_pin("402716");
    CHECK(one.starts_with("$argon2id$v=19$m=65536,t=2,p=1$"));
    CHECK(one != two);
    CHECK(records::is_pin(one, "402716"));
    CHECK(records::is_pin(two, "402716"));
    CHECK_FALSE(records::is_pin("$argon2id$v=19$m=64,t=1,p=1$" + one.substr(31), "402716")); // a weaker one is no PIN's
}
