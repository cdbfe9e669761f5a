namespace Scrapwright.Web;

/// <summary>An option of the start is wrong. The message is for the maker.</summary>
public sealed class StartException : Exception
{
    /// <summary>With a message for the maker.</summary>
    public StartException(string message)
        : base(message)
    {
    }

    /// <summary>With a message for the maker and its cause.</summary>
    public StartException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Without particulars.</summary>
    public StartException()
        : this("An option is wrong.")
    {
    }
}
