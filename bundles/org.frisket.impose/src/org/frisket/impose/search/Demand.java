package org.frisket.impose.search;

/** One copy to be laid. @param priority the lower comes first */
record Demand(int shape, int priority) {
}
