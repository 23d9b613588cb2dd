/**
 * The fonts that the product brings. The build puts them beside this package, each in the package it had in its
 * artifact: Liberation (SIL Open Font License 1.1) and DejaVu (Bitstream Vera terms), with their licences.
 */
package org.frisket.fonts;
