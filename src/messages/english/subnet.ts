/** The worked lines of the subnet sums. */
export const SUBNET_WORDS = {
  'subnet.network': '{address} with mask {mask} belongs to the network {network}.',
} as const;
