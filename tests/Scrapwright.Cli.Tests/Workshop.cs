using System.Text;

namespace Scrapwright.Cli.Tests;

/// <summary>A folder for one test, removed with everything in it.</summary>
internal sealed class Workshop : IDisposable
{
    public const string GiftColumns = "gift,recipient,circle,design,options,due,priority\n";

    public const string OneGift = GiftColumns + "squares,,,striped-squares,count=4; size=4 in,,1\n";

    public const string PileColumns = "label,species,length,width,thickness\n";

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("scrapwright-");

    public string Folder => folder.FullName;

    public string PathOf(string name) => Path.Combine(Folder, name);

    public static Workshop With(string pile, string gifts = OneGift) => With(Encoding.UTF8.GetBytes(pile), gifts);

    public static Workshop With(byte[] pile, string gifts = OneGift)
    {
        var workshop = new Workshop();
        File.WriteAllBytes(workshop.PathOf("pile.csv"), pile);
        File.WriteAllText(workshop.PathOf("gifts.csv"), gifts);
        return workshop;
    }

    public void Dispose() => folder.Delete(recursive: true);
}
