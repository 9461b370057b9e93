#include "command.hpp"

int main(int count, char** arguments) { return cotter::cli::run(count, arguments); }
