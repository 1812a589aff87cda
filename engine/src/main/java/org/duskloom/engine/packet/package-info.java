/**
 * E1.31 packets, byte for byte, and capture files of them: what ANSI E1.31-2018 puts into a packet, the headers of UDP,
 * IPv4 and Ethernet with their checksums, and the pcap format. Universes and slots count from 1; sequence numbers are
 * those of one universe and go round after 255. Takes the bytes of {@code wire}; files and networks stand after it in
 * the flow.
 */
package org.duskloom.engine.packet;
