export type Hunter = { readonly name: string; readonly phone: string; readonly email: string };

const names = [
  'Dale Hutchins', 'Jörg Müller', 'Aoife Ní Bhriain', 'Marguerite de la Fontaine-Beauregard', 'Bo Li', 'Siobhán O’Dowd',
  'Çelik Yılmaz', 'Hollis Pryce', 'Anneliese Schäfer-Königsmann', 'Nguyễn Thị Hồng Nhung', 'Øystein Bråten', 'Wanda Kowalczyk',
  'Earl Tibbets', 'Concepción Villanueva y Ortega', 'Lars-Åke Björklund', 'Mae Featherstonehaugh', 'Otis Granger', 'Zoë van der Meer',
  'Ferenc Szűcs', 'Priscilla Oakes', 'Łukasz Żabiński', 'Junie Whitlock', 'Gunnar Ásgeirsson', 'Theodora Papadimitriou',
  'Cody Rasmussen', 'Ines Großmann', 'Wendell Pike', 'Ekaterina Vasilyeva', 'Mo Idris', 'Hannelore Weiß',
  'Travis Boudreaux', 'Kaarina Hämäläinen', 'Ruben Castellanos', 'Penelope Ashcroft-Wynne', 'Desmond Achebe', 'Lotte Jørgensen',
  'Virgil Stamper', 'Naomi Tanaka', 'Clem Harker', 'Ottilie Freiin von Hohenstein', 'Rosa Delgado', 'Emmett Sayles',
  'Sigrún Einarsdóttir', 'Buck Lavender', 'Maximiliane Oberhuber', 'Percy Nightingale', 'Ottavia Lombardi', 'Gwen Llewellyn',
  'Hank Mortensen', 'Bettina Krüger', 'Silas Underwood', 'Amara Okonkwo', 'Jebediah Crane', 'Éloïse Tremblay',
  'Walt Dombrowski', 'Kirsi Mäkelä', 'Lorne MacAskill', 'Perpetua Bell', 'Rainer Zöllner', 'Dot Sweeney',
  'Abel Quintero', 'Josephine Underhill-Carrington', 'Mikkel Sørensen', 'Tess Gallagher', 'Horst Äpfelbach', 'Ida May Turnbull',
  'Caspian Lowell', 'Frida Nordström', 'Ned Applegate', 'Yusuf Demir', 'Cordelia Finch', 'Bram Hoekstra',
] as const;

/** Invented people, each with a telephone number of the range kept free for stories; every third leaves an address. */
export const hunters: readonly Hunter[] = names.map((name, at) => ({
  name,
  phone: `555 01${String(at + 10).padStart(2, '0')}`,
  email: at % 3 === 0 ? `hunter${at + 1}@hollow-ash.example` : '',
}));
