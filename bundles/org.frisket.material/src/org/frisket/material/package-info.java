/**
 * Stock: what a sheet is and what it weighs, the tools that work it, and what the studio's own trials say about how. Plain
 * Java and JDBC, no windows.
 */
package org.frisket.material;
