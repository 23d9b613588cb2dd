/** Pictures as they come: how large, how they are turned, how fine. */
package org.frisket.print.picture;
