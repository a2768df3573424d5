import { View } from '@react-pdf/renderer';
import type { InvoiceDocument } from '@/lib/documents';
import { BARK, GREY, PALE, grow } from './styles';
import { sizeToFit } from './text-width';
import { Words } from './words';

const LABEL = 9.5;

/** Whose paper it is, what it is, and for which animal. An estimate stands in a grey band with a broken edge. */
export function InvoiceHead({ document }: { readonly document: InvoiceDocument }) {
  const { shop } = document;
  return (
    <View>
      <View style={{ flexDirection: 'row', justifyContent: 'space-between', alignItems: 'flex-end', borderBottomWidth: 3, borderBottomColor: BARK, paddingBottom: 8, gap: 16 }}>
        <Words size={sizeToFit(shop.name, 300, 700, { most: 24, least: 15 })} weight={700} leading={1.15} color={BARK} style={{ maxWidth: 300 }}>{shop.name}</Words>
        <View style={{ alignItems: 'flex-end', ...grow }}>
          <Words size={10} style={{ textAlign: 'right' }}>{shop.address}</Words>
          <Words size={10} style={{ textAlign: 'right' }}>{shop.phone}</Words>
        </View>
      </View>
      <Title document={document} />
      <View style={{ flexDirection: 'row', flexWrap: 'wrap', marginTop: 14, rowGap: 8 }}>
        <Fact label="Number of the animal" value={document.order} isStrong />
        <Fact label="For" value={document.hunter} isStrong />
        <Fact label="Animal" value={document.animal} />
        <Fact label="Tag and place" value={document.origin} />
      </View>
    </View>
  );
}

function Title({ document: { isEstimate, title, issued } }: { readonly document: InvoiceDocument }) {
  const estimate = { backgroundColor: PALE, borderWidth: 1.5, borderStyle: 'dashed' as const, borderColor: GREY, paddingHorizontal: 10, paddingVertical: 6 };
  return (
    <View style={{ flexDirection: 'row', justifyContent: 'space-between', alignItems: 'flex-end', marginTop: 16, gap: 12, ...(isEstimate ? estimate : {}) }}>
      <Words size={sizeToFit(isEstimate ? title.toUpperCase() : title, 360, 700, { most: 26, least: 16 })} weight={700} leading={1.15}>
        {isEstimate ? title.toUpperCase() : title}
      </Words>
      <Words size={11}>{issued}</Words>
    </View>
  );
}

function Fact({ label, value, isStrong = false }: { readonly label: string; readonly value: string; readonly isStrong?: boolean }) {
  if (value === '') return null;
  return (
    <View style={{ width: '50%', paddingRight: 10 }}>
      <Words size={LABEL} color="#4a4a4a">{label}</Words>
      <Words size={isStrong ? 13 : 11.5} weight={isStrong ? 700 : 400}>{value}</Words>
    </View>
  );
}
