using System.Globalization;
using System.Text.Json;

namespace Pattress.Jobs;

/// <summary>Writes shopping, quote, prices and actuals of a job document.</summary>
internal static class MoneyWriter
{
    public static void Buying(Utf8JsonWriter json, BuyingWishes w)
    {
        json.WriteStartObject("buying");
        if (w.Budget is { } budget) json.WriteNumber("budget", budget);
        json.WriteMaybe("most_kinds", (double?)w.MostKinds);
        json.WriteMaybe("most_bits", (double?)w.MostBits);
        json.WriteIfYes("van_only", w.VanOnly);
        json.WriteIfYes("no_second_trip", w.NoSecondTrip);
        if (w.Avoid.Count > 0) json.WriteTexts("avoid", w.Avoid);
        json.WriteNumber("spare_percent", w.SparePercent);
        json.WriteNumber("trip_price", w.TripPrice);
        json.WriteEndObject();
    }

    public static void Quote(Utf8JsonWriter json, QuoteTerms q)
    {
        json.WriteStartObject("quote");
        json.WriteNumber("mark_up_percent", q.MarkUpPercent);
        json.WriteNumber("tax_percent", q.TaxPercent);
        json.WriteNumber("visits", q.Visits);
        json.WriteNumber("travel_minutes", q.TravelMinutes);
        json.WriteNumber("parking_price", q.ParkingPrice);
        json.WriteNumber("floors", q.Floors);
        json.WriteString("round_to", q.RoundTo.ToString(CultureInfo.InvariantCulture));
        json.WriteEndObject();
    }

    public static void Price(Utf8JsonWriter json, OwnPrice p)
    {
        json.WriteString("fixing", p.Fixing);
        json.WriteMaybe("name", p.Name);
        json.WriteNumber("pack", p.Pack);
        json.WriteNumber("pack_price", p.PackPrice);
        json.WriteMaybe("minutes", p.Minutes);
        if (p.Size is { } size) Size(json, size);
        if (p.Claim is { } claim) Claim(json, claim);
    }

    private static void Size(Utf8JsonWriter json, OwnSize s)
    {
        json.WriteStartObject("size");
        json.WriteMaybe("hole_mm", s.HoleMm);
        json.WriteMaybe("length_mm", s.LengthMm);
        json.WriteMaybe("grip_min_mm", s.GripMinMm);
        json.WriteMaybe("grip_max_mm", s.GripMaxMm);
        json.WriteMaybe("void_mm", s.VoidMm);
        json.WriteMaybe("embed_mm", s.EmbedMm);
        json.WriteEndObject();
    }

    private static void Claim(Utf8JsonWriter json, OwnClaim c)
    {
        json.WriteStartObject("claim");
        json.WriteNumber("load_n", c.LoadN);
        json.WriteString("load", c.Load);
        json.WriteString("basis", c.Basis);
        json.WriteMaybe("factor", c.Factor);
        json.WriteMaybe("board_mm", c.BoardMm);
        json.WriteEndObject();
    }

    public static void Actual(Utf8JsonWriter json, Actual a)
    {
        json.WriteString("id", a.Id);
        json.WriteString("step", a.Step);
        json.WriteNumber("count", a.Count);
        json.WriteNumber("minutes", a.Minutes);
    }
}
