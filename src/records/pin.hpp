#pragma once

// A person's PIN: six digits. What is kept is its Argon2id hash, never the PIN. A PIN says who writes; it does not
// protect the file: six digits fall to a day or two of computing.

#include <string>
#include <string_view>

namespace cotter::records {

inline constexpr std::size_t pin_digits = 6;

// FormError if it is not six digits, or all the same, or counts up or down.
void check_pin(std::string_view pin);

// Argon2id, 64 MiB, two passes, one lane, in PHC form with its own salt. Source: RFC 9106.
std::string hash_pin(std::string_view pin); // std::bad_alloc where there is no memory for it
bool is_pin(const std::string& hash, std::string_view pin);

// Is this a hash that hash_pin could have made?
bool is_pin_hash(std::string_view text);

} // namespace cotter::records
