#include "finding.hpp"
