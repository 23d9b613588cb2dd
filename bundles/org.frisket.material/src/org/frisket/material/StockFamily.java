package org.frisket.material;

/** Kinds of stock that behave alike under a blade; advice never reaches from one family to another. */
public enum StockFamily {
	CARD, PAPER, LABEL, FILM, FABRIC, BOARD, FOAM, OTHER
}
