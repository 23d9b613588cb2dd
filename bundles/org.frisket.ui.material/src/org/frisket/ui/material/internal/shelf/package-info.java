/** The stock shelf: its rows, the form of a stock, packs, catalogues, tables, and the stock of a layer. */
package org.frisket.ui.material.internal.shelf;
