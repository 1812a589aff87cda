/** Lights that arrive one by one and stay. Shares and seconds as in {@code org.duskloom.effects.kit}. */
package org.duskloom.effects.pile;
