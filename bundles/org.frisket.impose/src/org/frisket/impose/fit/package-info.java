/** How deep two parts are in each other, as quickly as can be asked. */
package org.frisket.impose.fit;
