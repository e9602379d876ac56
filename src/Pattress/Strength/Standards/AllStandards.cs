using Pattress.Strength.Plates;

namespace Pattress.Strength.Standards;

/// <summary>The sections that hold rules; a new one is entered here.</summary>
internal static class AllStandards
{
    internal static IEnumerable<Rule> Rules() =>
    [
        .. EN_1990_2002.Section6.Rules,
        .. EN_1990_2002.AnnexC.Rules,
        .. EN_1990_2002.AnnexD.Rules,
        .. EN_14358_2016.Section3.Rules,
        .. ISO_16269_6_2014.ToleranceLimits.Rules,
        .. ASTM_E178_2016.Outlying.Rules,
        .. EN_1991_1_1_2002.Section6_4.Rules,
        .. EN_1992_4_2018.Section7_2_Steel.Rules,
        .. EN_1992_4_2018.Section7_2_Concrete.Rules,
        .. EN_1992_4_2018.Section7_2_More.Rules,
        .. EN_1993_1_3_2006.Section8_3.Rules,
        .. EN_1993_1_3_2006.Table8_1.Rules,
        .. EN_1993_1_3_2006.Table8_2.Rules,
        .. EN_1993_1_8_2005.Table3_4.Rules,
        .. EN_1995_1_1_2004.Section2and3.Rules,
        .. EN_1995_1_1_2004.Section8_2_2.Rules,
        .. EN_1995_1_1_2004.Section8_2_3.Rules,
        .. EN_1995_1_1_2004.Section8_2_3_Double.Rules,
        .. EN_1995_1_1_2004.Section3_Panels.Rules,
        .. EN_1995_1_1_2004.Section8_3.Rules,
        .. EN_1995_1_1_2004.Section8_3_Nails.Rules,
        .. EN_1995_1_1_2004.Section8_5.Rules,
        .. EN_1995_1_1_2004.Section8_7.Rules,
        .. prEN_1995_1_1_2023.Section11_2_2.Rules,
        .. EN_14592_2008.Declared.Rules,
        .. EN_338_2016.Table1.Rules,
        .. EN_1996_1_1_2005.Section3_6.Rules,
        .. ISO_898_1_2013.Section9.Rules,
        .. ASME_B18_6_1_1981.Gauge.Rules,
        .. NDS_2018.Section12_2.Rules,
        .. NDS_2018.Section12_3.Rules,
        .. NDS_2018.Section12_4.Rules,
        .. NDS_2018.AppendixI.Rules,
        .. AWC_TR12_2015.GeneralDowel.Rules,
        .. AISI_S100_2016.SectionJ4.Rules,
        .. EN_520_2004.Table4.Rules,
        .. ASTM_C1396_2017.Section5.Rules,
        .. USDA_Wood_Handbook_2010.Chapter8.Rules,
        .. BS_8539_2012.AnnexB.Rules,
        .. NEC_2017.Section300_4.Rules,
        .. EN_13120_2009.Cords.Rules,
        .. Strip.Rules,
        .. Circle.Rules,
    ];
}
