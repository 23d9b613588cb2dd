package org.frisket.ui.views.internal.stack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.ui.views.StockNotes;

/**
 * What the stack says of a layer or an element.
 *
 * @param pieces     connected pieces to be cut from it; empty before they were counted
 * @param findings   the gravest first
 * @param operations what is done to it, in a fixed order
 * @param stock      what the studio knows of a layer's stock; empty for an element
 */
record RowState(OptionalInt pieces, List<Finding> findings, Set<OperationKind> operations, Optional<StockNotes.Note> stock) {
}
