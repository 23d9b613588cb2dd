/** Print and cut: art that is printed and cut out, marks that are found again, cuts that follow the ink. */
package org.frisket.print;
