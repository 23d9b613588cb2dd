/**
 * Where things go that are written or printed beside a job: pages and tiles of paper, labels near what they name.
 * Numbers only; who paints them is another matter.
 */
package org.frisket.prepare.layout;
