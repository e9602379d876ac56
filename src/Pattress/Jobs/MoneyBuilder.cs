using System.Globalization;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs;

/// <summary>
/// Shopping, quote, prices and actuals of a checked document. Money comes as a number of at most 15 digits; as a decimal it is
/// what was written, digit for digit.
/// </summary>
internal static class MoneyBuilder
{
    public static BuyingWishes Buying(Entry? entry)
    {
        var usual = new BuyingWishes();
        return entry is null ? usual : new BuyingWishes
        {
            Budget = MaybeMoney(entry, "budget"),
            MostKinds = (int?)entry.MaybeNumber("most_kinds"),
            MostBits = (int?)entry.MaybeNumber("most_bits"),
            VanOnly = JobBuilder.IsYes(entry, "van_only"),
            NoSecondTrip = JobBuilder.IsYes(entry, "no_second_trip"),
            Avoid = [.. entry.ItemsOf("avoid").Select(a => a.Text)],
            SparePercent = (int)entry.NumberOr("spare_percent", usual.SparePercent),
            TripPrice = MaybeMoney(entry, "trip_price") ?? usual.TripPrice,
        };
    }

    public static QuoteTerms Quote(Entry? entry)
    {
        var usual = new QuoteTerms();
        return entry is null ? usual : new QuoteTerms
        {
            MarkUpPercent = MaybeMoney(entry, "mark_up_percent") ?? usual.MarkUpPercent,
            TaxPercent = MaybeMoney(entry, "tax_percent") ?? usual.TaxPercent,
            Visits = (int)entry.NumberOr("visits", usual.Visits),
            TravelMinutes = entry.NumberOr("travel_minutes", usual.TravelMinutes),
            ParkingPrice = MaybeMoney(entry, "parking_price") ?? usual.ParkingPrice,
            Floors = (int)entry.NumberOr("floors", usual.Floors),
            RoundTo = entry.MaybeText("round_to") is { } step ? decimal.Parse(step, CultureInfo.InvariantCulture) : usual.RoundTo,
        };
    }

    public static OwnPrice Price(Entry e) =>
        new(e.TextOf("fixing"), e.TextOr("name", ""), (int)e.NumberOf("pack"), (decimal)e.NumberOf("pack_price"), e.MaybeNumber("minutes"))
        {
            Size = e["size"] is { } s ? Some(new OwnSize(s.MaybeNumber("hole_mm"), s.MaybeNumber("length_mm"), s.MaybeNumber("grip_min_mm"), s.MaybeNumber("grip_max_mm"), s.MaybeNumber("void_mm"), s.MaybeNumber("embed_mm"))) : null,
            Claim = e["claim"] is { } c ? new(c.NumberOf("load_n"), c.TextOr("load", "not_said"), c.TextOr("basis", "not_said"), c.MaybeNumber("factor"), c.MaybeNumber("board_mm")) : null,
        };

    private static OwnSize? Some(OwnSize size) => size.IsNothing ? null : size;

    public static Actual Actual(Entry e) => new(e.TextOf("id"), e.TextOf("step"), e.NumberOf("count"), e.NumberOf("minutes"));

    private static decimal? MaybeMoney(Entry entry, string name) => entry.MaybeNumber(name) is { } number ? (decimal)number : null;
}
