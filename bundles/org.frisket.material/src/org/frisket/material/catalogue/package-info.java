/** Catalogues of stock that a studio can take over, built in or brought by a bundle. */
package org.frisket.material.catalogue;
