#include "bench.hpp"

#include "decide.hpp"
#include "question_form.hpp"

#include <cstdio>
#include <fstream>
#include <stdexcept>

namespace cotter::bench {

namespace {

constexpr int rounds = 9;
constexpr std::size_t few = 100; // shows what fetching the others from memory costs
constexpr double aim = 200'000;

std::vector<std::string> lines_of(const std::filesystem::path& path)
{
    std::ifstream in{path};
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);)
        if (!line.empty())
            lines.push_back(std::move(line));
    if (lines.empty())
        throw std::runtime_error{path.string() + ": no questions in it"};
    return lines;
}

// Every finding is counted, so that no decision is left out.
std::size_t decide_all(const std::vector<rules::Question>& questions)
{
    std::size_t findings = 0;
    for (const rules::Question& each : questions)
        findings += rules::decide(each).findings.size();
    return findings;
}

// As many decisions in each round, however few the questions.
double rate_of(const std::vector<rules::Question>& questions, std::size_t decisions)
{
    const std::size_t times = std::max<std::size_t>(1, decisions / questions.size());
    std::vector<double> rates;
    for (int i = 0; i < rounds; ++i) {
        const Seconds took = time_of([&] {
            for (std::size_t j = 0; j < times; ++j)
                decide_all(questions);
        });
        rates.push_back(static_cast<double>(times * questions.size()) / took.count());
    }
    return median(rates);
}

} // namespace

void time_decisions(const std::filesystem::path& path)
{
    const auto lines = lines_of(path);
    const auto many = static_cast<double>(lines.size());
    std::vector<rules::Question> questions;
    const Seconds parsing = time_of([&] {
        for (const std::string& line : lines)
            questions.push_back(records::read_question(line));
    });
    const double findings = static_cast<double>(decide_all(questions)) / many; // and warm
    std::printf("%zu questions, %.1f findings each\n", questions.size(), findings);
    std::printf("read:   %9.0f a second\n", many / parsing.count());
    std::printf("decide: %9.0f a second over all (median of %d rounds; aim %.0f)\n",
                rate_of(questions, questions.size()), rounds, aim);
    const std::vector<rules::Question> first(
        questions.begin(), questions.begin() + static_cast<std::ptrdiff_t>(std::min(few, questions.size())));
    std::printf("        %9.0f a second over the first %zu, which stay in the processor's cache\n",
                rate_of(first, questions.size()), first.size());
}

} // namespace cotter::bench
